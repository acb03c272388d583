import type { Claim, Ingredient, Provenance } from '#engine/model/records.ts'
import { fileOf, placeOf } from './places.ts'

const LISTS = [
  ['roles', 'roles'],
  ['clashes', 'clashes'],
  ['needs', 'needs'],
  ['boostedBy', 'boosted_by'],
  ['inactivatedBy', 'inactivated_by'],
  ['standsFor', 'stands_in_for'],
  ['notFor', 'does_not_stand_in_for'],
] as const

/** Asks of everything a record states what is wrong with its origin; the place is put together only for a fault. */
export function faultsOfOrigin(ingredient: Ingredient, fault: (provenance: Provenance) => string | undefined) {
  const problems: { path: string; message: string }[] = []
  const ask = (provenance: Provenance, path: () => string): void => {
    const message = fault(provenance)
    if (message !== undefined) problems.push({ path: path(), message })
  }
  const askClaim = (claim: Claim): void => ask(claim, () => placeOf(ingredient, claim))
  for (const claims of ingredient.facts.values()) claims.forEach(askClaim)
  for (const [list, written] of LISTS) {
    ingredient[list].forEach((one, at) => ask(one, () => `${fileOf(ingredient)}/${written}/${at}`))
  }
  return problems
}
