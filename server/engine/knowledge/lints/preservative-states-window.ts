import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Guards against a preservative without the pH at which it works: at the wrong pH most do nothing. What is not shown to work needs none. */
export const preservativeStatesWindow: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()]
    .filter((one) => one.roles[0]?.role === 'preservative' && !one.classes.has('unproven-preservative'))
    .filter((one) => !decidedRange(one, 'ph_effective'))
    .map((one) => ({ path: `${fileOf(one)}/facts`, message: 'a preservative without the pH at which it works' }))
