import type { Ingredient, Role } from '#engine/model/records.ts'

const ASKED = new WeakMap<Role, string[]>()

/** Properties by which a role ranks stand-ins and by which it doses them; level_percent: the usual level in the role. */
export function askedBy(role: Role): string[] {
  const known = ASKED.get(role)
  if (known) return known
  const asked = askedAnew(role)
  ASKED.set(role, asked)
  return asked
}

function askedAnew({ swap }: Role): string[] {
  const ranks = swap.criteria.flatMap(({ by, property }) =>
    property ? [property] : by === 'spectrum' ? ['spectrum'] : [],
  )
  const doses = {
    same: [],
    'active-matter': ['active_percent'],
    equivalents: ['molar_mass', 'equivalents'],
    strength: ['level_percent'],
    'own-level': ['level_percent'],
  }[swap.dose]
  return [...new Set([...ranks, ...doses])].sort()
}

/** Nothing is known of a property that a role asks for. */
export const lacks = (one: Ingredient, role: string, property: string): boolean =>
  property === 'level_percent'
    ? !one.roles.some((claim) => claim.role === role && claim.level_percent?.typical !== undefined)
    : !one.facts.get(property)?.some(({ used }) => used)

/** What every record states, however short. */
const BARE_BONES = new Set(['usual', 'phase', 'form', 'solubility'])

function furtherStatements(one: Ingredient): number {
  const facts = [...one.facts.keys()].filter((property) => !BARE_BONES.has(property)).length
  const { clashes, needs, boostedBy, inactivatedBy, standsFor, notFor } = one
  return (
    facts + [clashes, needs, boostedBy, inactivatedBy, standsFor, notFor].reduce((sum, { length }) => sum + length, 0)
  )
}

const MOST_LACKING = 1
const LEAST_FURTHER = 4

/**
 * Full is a record that states all but at most one of what the role it is first for ranks and doses by, and at least
 * four things beside role, class, phase, form, solubility and how usual it is; every other is short. A record may call
 * itself short.
 */
export function tierOf(one: Ingredient, roles: ReadonlyMap<string, Role>): Ingredient['tier'] {
  if (one.tier !== 'full') return one.tier
  const role = roles.get(one.roles[0]?.role ?? '')
  if (!role) return 'short'
  const lacking = askedBy(role).filter((property) => lacks(one, role.id, property)).length
  return lacking <= MOST_LACKING && furtherStatements(one) >= LEAST_FURTHER ? 'full' : 'short'
}
