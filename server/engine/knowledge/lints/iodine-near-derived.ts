import type { Lint } from './lint.ts'
import { farFromDerived } from './near-derived.ts'

const TOLERANCE = 3 // scatter of the Wijs method between laboratories and of mid-points of ranges

/** Points out iodine values that do not go with the fatty acids: one of the two is of another oil or grade. */
export const iodineNearDerived: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((oil) => farFromDerived(oil, 'iodine_value', TOLERANCE))
