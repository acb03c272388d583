import type { Claim, Ingredient } from '#engine/model/records.ts'
import type { Range } from '#engine/units/range.ts'

/** The claim that decides a property. */
export const deciding = (ingredient: Ingredient, property: string): Claim | undefined =>
  ingredient.facts.get(property)?.find(({ used }) => used)

/** A number as a range of one point; undefined where the claim holds no number. */
export function rangeOfClaim({ value, min, max }: Claim): Range | undefined {
  if (value !== undefined) return { min: value, max: value }
  if (min === undefined && max === undefined) return undefined
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) }
}

/** Decided range of a property. */
export function decidedRange(ingredient: Ingredient, property: string): Range | undefined {
  const claim = deciding(ingredient, property)
  return claim && rangeOfClaim(claim)
}

/** Words of one group among classes, as charge or completeness. */
export const hasAny = (ingredient: Ingredient, classes: readonly string[]): boolean =>
  classes.some((one) => ingredient.classes.has(one))

export const CHARGES = ['anionic', 'cationic', 'amphoteric', 'nonionic'] as const
