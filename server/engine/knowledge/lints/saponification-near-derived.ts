import type { Lint } from './lint.ts'
import { farFromDerived } from './near-derived.ts'

const TOLERANCE = 2

/** Points out saponification values that do not go with the fatty acids: a soap made by them has too much or too little lye. */
export const saponificationNearDerived: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((oil) => farFromDerived(oil, 'saponification_value', TOLERANCE))
