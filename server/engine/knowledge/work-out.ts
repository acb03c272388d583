import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import { chainClaims } from './chain-in-name.ts'
import type { ClassFacts } from './class-facts.ts'
import { formClaims } from './form-of-melting.ts'
import { inheritedClaims } from './inherited-claims.ts'
import { phaseClaims } from './phase-claims.ts'

/** Puts worked-out claims behind all others; the first is used where nothing else is. */
export function withDerived(ingredient: Ingredient, derived: readonly Claim[]): Ingredient {
  if (derived.length === 0) return ingredient
  const facts = new Map(ingredient.facts)
  for (const claim of derived) {
    const own = facts.get(claim.property) ?? []
    facts.set(claim.property, [...own, { ...claim, used: !own.some(({ used }) => used) }])
  }
  return { ...ingredient, facts }
}

/** Statements about a class may hold of members of one form or solubility only, so these two come first. */
const FIRST = ['form', 'solubility']

/**
 * What follows from the record itself, in this order: chain length from the name, form and solubility of its class,
 * form from the melting point, all else that its classes and first role state, then the phase.
 */
export function workOut(ingredient: Ingredient, facts: ClassFacts, roles: ReadonlyMap<string, Role>): Ingredient {
  const steps: ((one: Ingredient) => Claim[])[] = [
    (one) => chainClaims(one, roles),
    (one) => inheritedClaims(one, facts, roles, FIRST),
    formClaims,
    (one) => inheritedClaims(one, facts, roles),
    (one) => phaseClaims(one, roles),
  ]
  return steps.reduce((one, step) => withDerived(one, step(one)), ingredient)
}
