import { CHARGES } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Guards against one substance with two charges; a blend may bring several, of which nonionic counts with any. */
export const chargeIsOne: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) => {
    const own = CHARGES.filter((charge) => ingredient.classes.has(charge))
    if (own.length < 2 || ingredient.madeOf.length > 0) return []
    return [{ path: `${fileOf(ingredient)}/classes`, message: `is ${own.join(' and ')} at once` }]
  })
