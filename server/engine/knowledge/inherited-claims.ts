import { ACCESS_ORDER } from '#engine/model/access.ts'
import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import type { ClassFact, ClassFacts, Only } from './class-facts.ts'
import { usedClaim } from './used-claim.ts'

/** A statement of a class or role about a member. */
export interface Inherited {
  /** class:x or role:x */
  from: string
  fact: ClassFact
}

/** The first role and those above it, the nearest first. */
export function rolesAbove(one: Ingredient, roles: ReadonlyMap<string, Role>): string[] {
  const above: string[] = []
  for (let role = one.roles[0]?.role; role !== undefined && !above.includes(role); role = roles.get(role)?.broader)
    above.push(role)
  return above
}

const isMeant = (one: Ingredient, { form, solubility }: Only): boolean =>
  (form === undefined || usedClaim(one, 'form')?.is === form) &&
  (solubility === undefined || usedClaim(one, 'solubility')?.is === solubility)

type Wanted = (property: string) => boolean

const anything: Wanted = () => true

function keep(found: Map<string, Inherited[]>, one: Ingredient, from: string, fact: ClassFact): void {
  if (fact.only && !isMeant(one, fact.only)) return
  const known = found.get(fact.property)
  if (known) known.push({ from, fact })
  else found.set(fact.property, [{ from, fact }])
}

/** All that classes and the first role say of a record, by property. Of roles above one another the nearest speaks. */
export function statementsAbout(
  one: Ingredient,
  facts: ClassFacts,
  roles: ReadonlyMap<string, Role>,
  isWanted: Wanted = anything,
): Map<string, Inherited[]> {
  const found = new Map<string, Inherited[]>()
  for (const id of one.classes) {
    const about = facts.classes.get(id)
    if (about) for (const fact of about) if (isWanted(fact.property)) keep(found, one, `class:${id}`, fact)
  }
  const byRole = new Set<string>()
  for (const id of rolesAbove(one, roles)) {
    for (const fact of facts.roles.get(id) ?? []) {
      if (isWanted(fact.property) && !byRole.has(fact.property)) keep(found, one, `role:${id}`, fact)
      byRole.add(fact.property)
    }
  }
  return found
}

const bodyOf = ({ value, min, max, is, spectrum }: Claim): string => JSON.stringify([value, min, max, is, spectrum])

/** Whether all statements about one property say the same. */
export const agree = (statements: readonly Inherited[]): boolean =>
  statements.length === 1 || new Set(statements.flatMap(({ fact }) => fact.claims.slice(0, 1).map(bodyOf))).size <= 1

const rankOf = ({ fact }: Inherited): number => ACCESS_ORDER.indexOf(fact.claims[0]?.access ?? 'common-practice')

/** The better seen of statements that agree; the first of equals. */
function bestSeen(statements: readonly Inherited[]): Inherited | undefined {
  let best = statements[0]
  for (const other of statements) if (best && rankOf(other) < rankOf(best)) best = other
  return best
}

/** "class:alkyl-sulfate" in words. */
export const nameOfGroup = (from: string): string => from.replace(':', ' ')

function takenOver(one: Ingredient, claim: Claim, { from, fact }: Inherited): Claim {
  const at = fact.claims.indexOf(claim)
  const id = `${one.id}#${claim.property}/class${at === 0 ? '' : `-${at + 1}`}`
  const place = claim.locator === '' ? '' : ` (${claim.locator})`
  return { ...claim, id, kind: 'derived', locator: `as a member of ${nameOfGroup(from)}${place}` }
}

/** What a mixture takes over; all else has to be worked out from its parts or stated. */
const OF_MIXTURES = ['form', 'solubility', 'phase']

const isMixture = ({ inci, madeOf }: Ingredient): boolean => madeOf.length > 0 || inci.includes(' (and) ')

/**
 * Claims that a record takes over from its classes and its first role, marked derived, for properties of which it has
 * no value of its own. None where two of them disagree: the record then has to state its own. A mixture takes over only
 * form, solubility and phase.
 */
export function inheritedClaims(
  one: Ingredient,
  facts: ClassFacts,
  roles: ReadonlyMap<string, Role>,
  isWanted: Wanted = anything,
): Claim[] {
  const claims: Claim[] = []
  const mixture = isMixture(one)
  const isOpen: Wanted = (property) =>
    isWanted(property) && !usedClaim(one, property) && (!mixture || OF_MIXTURES.includes(property))
  for (const statements of statementsAbout(one, facts, roles, isOpen).values()) {
    if (!agree(statements)) continue
    const best = bestSeen(statements)
    if (best) for (const claim of best.fact.claims) claims.push(takenOver(one, claim, best))
  }
  return claims
}
