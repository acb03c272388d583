import type { Ingredient, Tier } from '#engine/model/records.ts'

/** A record as it stands in a list. */
export interface ShortRecord {
  id: string
  inci: string
  tier: Tier
  names: string[]
  roles: string[]
  classes: string[]
}

export const shortRecord = (ingredient: Ingredient): ShortRecord => ({
  id: ingredient.id,
  inci: ingredient.inci,
  tier: ingredient.tier,
  names: ingredient.names.exact,
  roles: [...new Set(ingredient.roles.map(({ role }) => role))],
  classes: [...ingredient.classes].sort(),
})
