import type { Ingredient } from '#engine/model/records.ts'
import { gap } from '#engine/units/range.ts'
import { decidedRange } from './facts.ts'
import type { Lint, Vocabulary } from './lint.ts'
import { upFrom } from './members.ts'
import { fileOf } from './places.ts'

const TOLERANCE_PERCENT = 5 // shares of trade blends are round figures

/** Broadest role of the job for which a blend is bought. */
const branchOf = (ingredient: Ingredient, { roles }: Vocabulary): string =>
  upFrom(ingredient.roles[0]?.role ?? '', roles).at(-1) ?? ''

/**
 * What the parts, stated pure, leave as active matter: those that do the blend's job themselves, or all that is not
 * water. Both ways of counting are in use (a quat in fatty alcohol by the quat, a wash concentrate by its solids).
 */
function activeOfParts(blend: Ingredient, vocabulary: Vocabulary): number[] {
  const branch = branchOf(blend, vocabulary)
  const doTheJob = blend.madeOf.filter(({ ingredient }) =>
    vocabulary.ingredients.get(ingredient)?.roles.some(({ role }) => upFrom(role, vocabulary.roles).includes(branch)),
  )
  const solids = blend.madeOf.filter(({ ingredient }) => ingredient !== 'aqua')
  return [doTheJob, solids].map((parts) => parts.reduce((sum, { share_percent }) => sum + share_percent, 0))
}

/** Guards against a blend whose active matter is not in its parts: it would be dosed by the one and judged by the other. */
export const blendActiveFitsParts: Lint = (_raw, vocabulary) =>
  [...vocabulary.ingredients.values()].flatMap((blend) => {
    const stated = decidedRange(blend, 'active_percent')
    if (blend.madeOf.length === 0 || !stated) return []
    const possible = activeOfParts(blend, vocabulary)
    if (possible.some((active) => gap(stated, { min: active, max: active }) <= TOLERANCE_PERCENT)) return []
    return [
      {
        path: `${fileOf(blend)}/facts/active_percent`,
        message: `states ${stated.min ?? '?'} to ${stated.max ?? '?'} %, its parts hold ${possible.join(' or ')} %`,
      },
    ]
  })
