import { deciding } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Guards against a preservative of which nobody says what it works on: it would look as if it covered everything. */
export const preservativeStatesSpectrum: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()]
    .filter((one) => one.roles[0]?.role === 'preservative' && !deciding(one, 'spectrum')?.spectrum)
    .map((one) => ({ path: `${fileOf(one)}/facts`, message: 'a preservative without spectrum' }))
