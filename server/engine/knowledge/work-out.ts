import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import type { AcidTable } from './acids.ts'
import { chainClaims } from './chain-in-name.ts'
import type { ClassFacts } from './class-facts.ts'
import { equivalentClaims } from './equivalent-claims.ts'
import { formClaims } from './form-of-melting.ts'
import { inheritedClaims } from './inherited-claims.ts'
import { phaseClaims } from './phase-claims.ts'

/** Puts worked-out claims behind all others of a record; the first is used where nothing else is. */
function addTo(facts: Map<string, Claim[]>, derived: readonly Claim[]): void {
  for (const claim of derived) {
    const own = facts.get(claim.property)
    const used = !own?.some((other) => other.used)
    const added = claim.used === used ? claim : { ...claim, used }
    facts.set(claim.property, own ? [...own, added] : [added])
  }
}

/** The record with worked-out claims behind all others. */
export function withDerived(ingredient: Ingredient, derived: readonly Claim[]): Ingredient {
  if (derived.length === 0) return ingredient
  const facts = new Map(ingredient.facts)
  addTo(facts, derived)
  return { ...ingredient, facts }
}

/** What things follow from. */
export interface Grounds {
  classFacts: ClassFacts
  roles: ReadonlyMap<string, Role>
  acids: AcidTable
}

/** Statements about a class may hold of members of one form or solubility only, so these two come first. */
const comesFirst = (property: string): boolean => property === 'form' || property === 'solubility'
const comesLater = (property: string): boolean => !comesFirst(property)

/**
 * What follows from the record itself, in this order: chain length from the name, equivalents from the acid constants,
 * form and solubility of its class, form from the melting point, all else that its classes and first role state, then
 * the phase.
 */
export function workOut(ingredient: Ingredient, { classFacts: facts, roles, acids }: Grounds): Ingredient {
  const known = new Map(ingredient.facts)
  const one: Ingredient = { ...ingredient, facts: known }
  addTo(known, chainClaims(one, roles))
  addTo(known, equivalentClaims(one, acids, roles))
  addTo(known, inheritedClaims(one, facts, roles, comesFirst))
  addTo(known, formClaims(one))
  addTo(known, inheritedClaims(one, facts, roles, comesLater))
  addTo(known, phaseClaims(one, roles))
  return one
}
