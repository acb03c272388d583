import type { Ingredient, Problem, Provenance } from '#engine/model/records.ts'
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

type Fault = (provenance: Provenance) => string | undefined

/** What is wrong with the origin of anything a record states; the place is put together only for a fault. */
export function faultsOfOrigin(ingredient: Ingredient, fault: Fault): Problem[] {
  const problems: Problem[] = []
  for (const claims of ingredient.facts.values()) {
    for (const claim of claims) {
      const message = fault(claim)
      if (message !== undefined) problems.push({ path: placeOf(ingredient, claim), message })
    }
  }
  for (const [list, written] of LISTS) {
    for (let at = 0; at < ingredient[list].length; at++) {
      const one = ingredient[list][at]
      const message = one && fault(one)
      if (message !== undefined) problems.push({ path: `${fileOf(ingredient)}/${written}/${at}`, message })
    }
  }
  return problems
}
