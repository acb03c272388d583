import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

const LEAST_PERCENT = 10

/** Guards against a blend that hides the charge of a part: clashes of charges are looked up on the line. */
export const blendShowsCharge: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((blend) => {
    if (blend.classes.has('amphoteric')) return []
    const brought = blend.madeOf
      .filter(({ share_percent }) => share_percent >= LEAST_PERCENT)
      .flatMap(({ ingredient }) => ingredients.get(ingredient) ?? [])
      .filter(({ classes }) => !classes.has('amphoteric'))
      .flatMap(({ classes }) => ['anionic', 'cationic'].filter((charge) => classes.has(charge)))
    return [...new Set(brought)]
      .filter((charge) => !blend.classes.has(charge))
      .map((charge) => ({
        path: `${fileOf(blend)}/classes`,
        message: `a part is ${charge}, the blend does not say so`,
      }))
  })
