import type { Claim, Ingredient } from '#engine/model/records.ts'

/** The claim of a property by which the program goes; undefined where none decides. */
export const usedClaim = (one: Pick<Ingredient, 'facts'>, property: string): Claim | undefined =>
  one.facts.get(property)?.find(({ used }) => used)
