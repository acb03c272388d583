import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { upFrom } from './members.ts'
import { fileOf } from './places.ts'

/** Guards against a main surfactant without active matter: it is dosed by it, and 30 % taken for 100 % triples a wash. */
export const surfactantStatesActiveMatter: Lint = (_raw, { ingredients, roles }) =>
  [...ingredients.values()]
    .filter(({ roles: own }) => upFrom(own[0]?.role ?? '', roles).includes('surfactant'))
    .filter((one) => !decidedRange(one, 'active_percent'))
    .map((one) => ({ path: `${fileOf(one)}/facts`, message: 'a surfactant without active matter' }))
