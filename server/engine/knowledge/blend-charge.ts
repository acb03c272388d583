import type { ClassId, Ingredient } from '#engine/model/records.ts'

const CHARGES = ['anionic', 'cationic', 'amphoteric', 'nonionic']
const IONS = ['anionic', 'cationic', 'amphoteric']
const LEAST_PERCENT = 10

/**
 * Charge of a recorded blend that states none: the ions that its parts bring from a tenth on, else nonionic where every
 * part says so. Nothing where a part has no record or states no charge: uncharged and unknown are not the same.
 */
export function chargeOfParts(blend: Ingredient, ingredients: ReadonlyMap<string, Ingredient>): ClassId[] {
  if (blend.madeOf.length === 0 || CHARGES.some((charge) => blend.classes.has(charge))) return []
  const parts = blend.madeOf.filter(({ ingredient }) => ingredient !== 'aqua')
  const ions = IONS.filter((charge) =>
    parts.some(
      ({ ingredient, share_percent }) =>
        share_percent >= LEAST_PERCENT && ingredients.get(ingredient)?.classes.has(charge) === true,
    ),
  )
  if (ions.length > 0) return ions
  return parts.every(({ ingredient }) => ingredients.get(ingredient)?.classes.has('nonionic')) ? ['nonionic'] : []
}
