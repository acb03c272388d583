import type { Ingredient } from '#engine/model/records.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import { matches } from '#engine/knowledge/selector.ts'
import { buildRoleGraph } from './build-graph.ts'
import type { RoleGraph } from './build-graph.ts'
import { deriveFromInventory } from './derive-from-inventory.ts'
import { deriveBlend } from './derive-blend.ts'
import { buildHoldsWith } from './holds-with.ts'
import type { HoldsWith } from './holds-with.ts'
import { buildRoleTree } from './role-tree.ts'
import type { RoleTree } from './role-tree.ts'
import type { Subject } from './subject.ts'

/** The knowledge with its graph: what every question is asked of. Built once, only read. */
export interface World {
  knowledge: Knowledge
  roles: RoleTree
  graph: RoleGraph
  holdsWith: HoldsWith
  /** record by id or alias; derived on the fly for inventory names and unrecorded blends; null when unknown */
  find(id: string): Subject | null
  /** all recorded ingredients, by id */
  subjects: readonly Subject[]
  /** recorded ingredients that play this role or a narrower one, by id */
  players(role: string): readonly Subject[]
}

const partsKey = (id: string): string => id.split('-and-').sort().join('|')

const EMPTY: readonly Subject[] = []

export function buildWorld(knowledge: Knowledge): World {
  const roles = buildRoleTree(knowledge.roles)
  const made = new Map<string, Subject>()
  // Blends are written in any order: the set of parts finds the record.
  const blends = new Map(
    [...knowledge.ingredients.values()].flatMap((one) =>
      one.id.includes('-and-') ? [[partsKey(one.id), one.id] as const] : [],
    ),
  )

  const limitsOf = ({ id, classes }: Ingredient) =>
    knowledge.limits.filter(
      (limit) => limit.members[id] !== undefined || limit.memberClasses.some((one) => classes.has(one)),
    )

  const enrich = (ingredient: Ingredient): Subject => {
    const allRoles = new Set(ingredient.roles.flatMap((claim) => roles.above(claim.role)))
    const base = {
      ...ingredient,
      allRoles,
      parts: [] as Subject['parts'],
      clashSides: [new Set<number>(), new Set<number>()] as const,
      limits: limitsOf(ingredient),
    }
    const side = (which: 0 | 1) =>
      new Set(knowledge.clashes.flatMap((clash, index) => (matches(clash.between[which], base) ? [index] : [])))
    const subject: Subject = { ...base, clashSides: [side(0), side(1)] }
    made.set(subject.id, subject)
    subject.parts =
      subject.madeOf.length === 0
        ? [{ subject, share: 1 }]
        : subject.madeOf.flatMap((part) => {
            const found = find(part.ingredient)
            return found ? [{ subject: found, share: part.share_percent / 100 }] : []
          })
    return subject
  }

  const find = (id: string): Subject | null => {
    const own = knowledge.aliases.get(id) ?? id
    const known = made.get(own)
    if (known) return known
    const record = knowledge.ingredients.get(own)
    if (record) return enrich(record)
    const row = knowledge.inventory.get(own)
    if (row) return enrich(deriveFromInventory(row))
    if (!own.includes('-and-')) return null
    const reordered = blends.get(partsKey(own))
    if (reordered && reordered !== own) return find(reordered)
    const blend = deriveBlend(own, find)
    return blend && enrich(blend)
  }

  const subjects = [...knowledge.ingredients.keys()].sort().flatMap((id) => find(id) ?? [])
  const byRole = new Map<string, Subject[]>()
  for (const subject of subjects) {
    for (const role of subject.allRoles) byRole.set(role, [...(byRole.get(role) ?? []), subject])
  }
  return {
    knowledge,
    roles,
    graph: buildRoleGraph(knowledge, subjects),
    holdsWith: buildHoldsWith(subjects),
    find,
    subjects,
    players: (role) => byRole.get(role) ?? EMPTY,
  }
}
