import type { Ingredient } from '#engine/model/records.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import { matches } from '#engine/knowledge/selector.ts'
import { deriveBlend } from './derive-blend.ts'
import { deriveFromInventory } from './derive-from-inventory.ts'
import type { RoleTree } from './role-tree.ts'
import type { Subject } from './subject.ts'

/** Blends are written in any order: the set of parts finds the record. */
const partsKey = (id: string): string => id.split('-and-').sort().join('|')

const blendIndex = (knowledge: Knowledge): Map<string, string> =>
  new Map(
    [...knowledge.ingredients.keys()].flatMap((id) => (id.includes('-and-') ? [[partsKey(id), id] as const] : [])),
  )

/** Looks records up by id or alias and works out once what the checks ask of each. */
export function createFinder(knowledge: Knowledge, roles: RoleTree): (id: string) => Subject | null {
  const made = new Map<string, Subject>()
  const blends = blendIndex(knowledge)

  const enrich = (ingredient: Ingredient): Subject => {
    const { id, classes } = ingredient
    const allRoles = new Set(ingredient.roles.flatMap((claim) => roles.above(claim.role)))
    const side = (which: 0 | 1) =>
      new Set(
        knowledge.clashes.flatMap((clash, n) => (matches(clash.between[which], { id, classes, allRoles }) ? [n] : [])),
      )
    const limits = knowledge.limits.filter(
      (limit) => limit.members[id] !== undefined || limit.memberClasses.some((one) => classes.has(one)),
    )
    const subject: Subject = { ...ingredient, allRoles, parts: [], clashSides: [side(0), side(1)], limits }
    // Blends that nobody recorded are made anew each time: there is no end of them.
    if (ingredient.tier !== 'inventory' || knowledge.inventory.has(id)) made.set(id, subject)
    subject.parts = subject.madeOf.flatMap((part) => {
      const found = find(part.ingredient)
      return found ? [{ subject: found, share: part.share_percent / 100 }] : []
    })
    if (subject.madeOf.length === 0) subject.parts.push({ subject, share: 1 })
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
    if (reordered !== undefined && reordered !== own) return find(reordered)
    const blend = deriveBlend(own, find)
    return blend && enrich(blend)
  }
  return find
}
