import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import type { ClassFact, ClassFacts, Only } from './class-facts.ts'

/** A statement of a class or role about a member. */
export interface Inherited {
  /** class:x or role:x */
  from: string
  fact: ClassFact
}

const used = (one: Ingredient, property: string): Claim | undefined =>
  one.facts.get(property)?.find((claim) => claim.used)

/** The first role and those above it, the nearest first. */
export function rolesAbove(one: Ingredient, roles: ReadonlyMap<string, Role>): string[] {
  const above: string[] = []
  for (let role = one.roles[0]?.role; role !== undefined && !above.includes(role); role = roles.get(role)?.broader)
    above.push(role)
  return above
}

const isMeant = (one: Ingredient, { form, solubility }: Only): boolean =>
  (form === undefined || used(one, 'form')?.is === form) &&
  (solubility === undefined || used(one, 'solubility')?.is === solubility)

/** All that classes and the first role say of a record, by property. Of roles above one another the nearest speaks. */
export function statementsAbout(
  one: Ingredient,
  facts: ClassFacts,
  roles: ReadonlyMap<string, Role>,
): Map<string, Inherited[]> {
  const found = new Map<string, Inherited[]>()
  const add = (from: string, fact: ClassFact): void => {
    if (!fact.only || isMeant(one, fact.only))
      found.set(fact.property, [...(found.get(fact.property) ?? []), { from, fact }])
  }
  for (const id of [...one.classes].sort()) for (const fact of facts.classes.get(id) ?? []) add(`class:${id}`, fact)
  const byRole = new Set<string>()
  for (const id of rolesAbove(one, roles)) {
    for (const fact of facts.roles.get(id) ?? []) {
      if (!byRole.has(fact.property)) add(`role:${id}`, fact)
      byRole.add(fact.property)
    }
  }
  return found
}

const bodyOf = ({ value, min, max, is, spectrum }: Claim): string => JSON.stringify([value, min, max, is, spectrum])

/** Whether all statements about one property say the same. */
export const agree = (statements: readonly Inherited[]): boolean =>
  new Set(statements.flatMap(({ fact }) => fact.claims.slice(0, 1).map(bodyOf))).size <= 1

const ACCESS_ORDER = ['read', 'secondary', 'memory', 'common-practice']

function bestSeen(statements: readonly Inherited[]): Inherited | undefined {
  const rank = ({ fact }: Inherited): number => ACCESS_ORDER.indexOf(fact.claims[0]?.access ?? '')
  return [...statements].sort((a, b) => rank(a) - rank(b))[0]
}

/** "class:alkyl-sulfate" in words. */
export const nameOfGroup = (from: string): string => from.replace(':', ' ')

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
  properties?: readonly string[],
): Claim[] {
  return [...statementsAbout(one, facts, roles)].flatMap(([property, statements]) => {
    const best = bestSeen(statements)
    if (!best || used(one, property) || !agree(statements)) return []
    if (properties && !properties.includes(property)) return []
    if (isMixture(one) && !OF_MIXTURES.includes(property)) return []
    return best.fact.claims.map((claim, at) => ({
      ...claim,
      id: `${one.id}#${property}/class${at === 0 ? '' : `-${at + 1}`}`,
      kind: 'derived' as const,
      locator: `as a member of ${nameOfGroup(best.from)}${claim.locator === '' ? '' : ` (${claim.locator})`}`,
    }))
  })
}
