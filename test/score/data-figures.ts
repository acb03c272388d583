import type { RawData, World } from '#engine/index.ts'
import { contestedProperties } from '#engine/graph/contested.ts'
import { inventoryClaims } from '#engine/knowledge/inventory-claims.ts'
import { gradeOf } from '#engine/knowledge/source-grade.ts'
import { askedBy, lacks } from '#engine/knowledge/tier.ts'
import { statedFew } from '#engine/knowledge/lints/role-has-five-members.ts'
import { isSeen } from '#engine/model/access.ts'
import { isByProgram, isFromClass } from '#engine/model/evidence.ts'
import type { Claim, Ingredient, Provenance } from '#engine/model/records.ts'

export const ACCESS = ['read', 'secondary', 'memory', 'common-practice'] as const

/** Claims counted by how they were seen. */
export interface Seen {
  claims: number
  read: number
  secondary: number
  memory: number
  'common-practice': number
  /** read or secondary, 0 to 1; null where there is nothing */
  seen_share: number | null
}

/** How usual a thing is with small makers is the tool's own grading, no claim about the world. */
const OWN_GRADING = 'usual'

function seenOf(list: readonly Pick<Provenance, 'access'>[]): Seen {
  const counts = { read: 0, secondary: 0, memory: 0, 'common-practice': 0 }
  for (const { access } of list) counts[access] += 1
  const claims = list.length
  return { claims, ...counts, seen_share: claims === 0 ? null : (counts.read + counts.secondary) / claims }
}

const claimsOf = (one: Ingredient): Claim[] => [...one.facts.values()].flat()

/** What classes and roles state about their members, each statement once. */
const classClaims = ({ classFacts: { classes, roles } }: World['knowledge']): Claim[] =>
  [...classes.values(), ...roles.values()].flat().flatMap(({ claims }) => claims)

/** Claims that somebody outside made: neither worked out by the program nor the tool's own grading. */
const isFromOutside = (claim: Claim): boolean => !isByProgram(claim) && claim.property !== OWN_GRADING

const statementsOf = (one: Ingredient): Provenance[] => [
  ...one.roles,
  ...one.clashes,
  ...one.needs,
  ...one.boostedBy,
  ...one.inactivatedBy,
  ...one.standsFor,
  ...one.notFor,
]

function countBy<T>(list: readonly T[], keyOf: (one: T) => string): Record<string, number> {
  const counts: Record<string, number> = {}
  for (const one of list) counts[keyOf(one)] = (counts[keyOf(one)] ?? 0) + 1
  return Object.fromEntries(Object.entries(counts).sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)))
}

export function claimsReport({ knowledge }: World) {
  const records = [...knowledge.ingredients.values()]
  const claims = records.flatMap(claimsOf)
  const listed = records.flatMap(({ id }) => {
    const row = knowledge.inventory.get(id)
    return row ? inventoryClaims(row) : []
  })
  const everyName = [...knowledge.inventory.values()].flatMap((row) => inventoryClaims(row))
  const contested = records.map((one) => contestedProperties(one, knowledge.properties).length)
  const properties = [...new Set(claims.map(({ property }) => property))].sort()
  const rows = knowledge.limits.flatMap((limit) => limit.rows)
  return {
    records: {
      full: records.filter(({ tier }) => tier === 'full').length,
      short: records.filter(({ tier }) => tier === 'short').length,
      inventory_only: knowledge.inventory.size - records.filter(({ id }) => knowledge.inventory.has(id)).length,
    },
    claims: {
      from_outside: seenOf([...claims.filter(isFromOutside), ...classClaims(knowledge)]),
      /** the seen ones of these by the grade of their source, the best one where several are named */
      seen_by_grade: countBy(
        claims.filter(isFromOutside).filter(isSeen),
        ({ source }) => gradeOf(source, knowledge.sources) ?? 'not graded',
      ),
      of_classes: seenOf(classClaims(knowledge)),
      all: seenOf(claims),
      deciding: seenOf(claims.filter(({ used }) => used)),
      worked_out: seenOf(claims.filter(isByProgram)),
      taken_from_classes: claims.filter(isFromClass).length,
      own_grading: claims.filter(({ property }) => property === OWN_GRADING).length,
      with_inventory: seenOf([...claims, ...listed]),
      with_every_name: seenOf([...claims, ...everyName]),
      statements: seenOf(records.flatMap(statementsOf)),
      by_tier: Object.fromEntries(
        (['full', 'short'] as const).map((tier) => [
          tier,
          seenOf(records.filter((one) => one.tier === tier).flatMap(claimsOf)),
        ]),
      ),
      by_kind: countBy(claims, ({ kind }) => kind),
      by_property: Object.fromEntries(
        properties.map((property) => [
          property,
          seenOf(claims.filter((claim) => claim.property === property && isFromOutside(claim))),
        ]),
      ),
      measured_from_memory: claims.filter(({ kind, access }) => kind === 'measured' && access === 'memory').length,
    },
    contested: {
      properties: contested.reduce((sum, count) => sum + count, 0),
      records: contested.filter((count) => count > 0).length,
    },
    limits: {
      records: knowledge.limits.length,
      rows: seenOf(rows),
      by_market: countBy(knowledge.limits, (l) => l.market),
    },
  }
}

export function rolesReport(world: World, raw: RawData) {
  const few = statedFew(raw)
  return [...world.knowledge.roles.values()].map((role) => {
    const players = world.subjects.filter(({ allRoles }) => allRoles.has(role.id))
    const own = players.filter(({ roles }) => roles.some((claim) => claim.role === role.id))
    const gaps = askedBy(role).map((property) => [property, own.filter((one) => lacks(one, role.id, property)).length])
    return {
      id: role.id,
      full: players.filter(({ tier }) => tier === 'full').length,
      short: players.filter(({ tier }) => tier === 'short').length,
      /** of those that play this very role, not a narrower one */
      own: own.length,
      lacking: Object.fromEntries(gaps) as Record<string, number>,
      ...(few.has(role.id) && { few: few.get(role.id) }),
    }
  })
}
export type Report = ReturnType<typeof claimsReport> & { roles: ReturnType<typeof rolesReport> }
