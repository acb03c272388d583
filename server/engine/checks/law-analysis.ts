import type { FormulaContext } from '#engine/formula/context.ts'
import type { World } from '#engine/graph/world.ts'
import type { Composition } from '#engine/knowledge/expand-composition.ts'
import type { Analysis } from '#engine/model/formula.ts'

/** One substance that a raw material holds [% of the material]; found by the supplier, or typical of such materials. */
export interface Held {
  substance: string
  min_percent: number
  max_percent: number
  analysed: boolean
}

const recordId = (id: string, world: World): string => world.find(id)?.id ?? id

/** What the supplier says of a raw material, or undefined; two papers on one material count as one. */
export function analysisOf({ formula, world }: FormulaContext, id: string): Analysis | undefined {
  const own = (formula.analyses ?? []).filter(({ ingredient }) => recordId(ingredient, world) === id)
  const [first, ...more] = own
  if (!first || more.length === 0) return first
  return { ingredient: id, holds: own.flatMap(({ holds }) => holds), complete: own.some(({ complete }) => complete) }
}

/** What was found of one substance and of all that the law declares under one name with it [%]. */
function foundOf(substance: string, found: readonly Held[], world: World): number {
  const group = world.knowledge.allergens
    .filter(({ members, naturalComplex }) => !naturalComplex && members.includes(substance))
    .flatMap(({ members }) => members)
  return found.filter((one) => group.includes(one.substance)).reduce((sum, { max_percent }) => sum + max_percent, 0)
}

/**
 * What a raw material holds. A substance that the supplier found counts with that figure; one that the paper does not name
 * keeps its typical range, less what was found of others under the same name of the law, unless the paper is complete.
 */
export function heldBy(id: string, typical: Composition | undefined, context: FormulaContext): Held[] {
  const { world } = context
  const analysis = analysisOf(context, id)
  const found = (analysis?.holds ?? []).map(({ substance, percent }): Held => ({
    ...{ substance: recordId(substance, world), min_percent: percent, max_percent: percent, analysed: true },
  }))
  if (analysis?.complete) return found
  const named = new Set(found.map(({ substance }) => substance))
  const rest = (typical?.parts ?? [])
    .filter(({ substance }) => !named.has(substance))
    .map(({ substance, min_percent, max_percent }): Held => {
      const counted_percent = foundOf(substance, found, world)
      const less = (percent: number) => Math.max(0, percent - counted_percent)
      return { substance, min_percent: less(min_percent), max_percent: less(max_percent), analysed: false }
    })
  return [...found, ...rest]
}

/** Whether anybody can say what a substance is: a record, a name of the inventory, or a name that an entry of law counts. */
export const isNamedByLaw = ({ knowledge }: World, id: string): boolean =>
  knowledge.allergens.some(({ members }) => members.includes(id)) ||
  knowledge.limits.some(({ members }) => members[id] !== undefined)
