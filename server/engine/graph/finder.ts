import type { Ingredient, Limit } from '#engine/model/records.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { Selectable } from '#engine/knowledge/selector.ts'
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

/** Legal entries by the names and by the classes they count, as places in the list of all. */
function limitIndex({ limits }: Knowledge): (id: string, classes: ReadonlySet<string>) => Limit[] {
  const byName = new Map<string, number[]>()
  const note = (key: string, place: number) => {
    const places = byName.get(key)
    if (places) places.push(place)
    else byName.set(key, [place])
  }
  for (const [place, limit] of limits.entries()) {
    for (const id of Object.keys(limit.members)) note(id, place)
    for (const one of limit.memberClasses) note(`class:${one}`, place)
  }
  return (id, classes) => {
    const places = [id, ...[...classes].map((one) => `class:${one}`)].flatMap((key) => byName.get(key) ?? [])
    return [...new Set(places)].sort((a, b) => a - b).flatMap((place) => limits[place] ?? [])
  }
}

/** At which class clashes a thing stands on the one side or the other; each selector is asked once. */
function sideIndex({ clashes }: Knowledge): (subject: Selectable, side: 0 | 1) => Set<number> {
  const selectors = [...new Set(clashes.flatMap(({ between }) => between))]
  const placeOf = new Map(selectors.map((selector, place) => [selector, place]))
  const sides = clashes.map(({ between }) => between.map((selector) => placeOf.get(selector) ?? 0))
  const memo = new WeakMap<Selectable, boolean[]>()
  return (subject, side) => {
    const fits = memo.get(subject) ?? selectors.map((selector) => matches(selector, subject))
    memo.set(subject, fits)
    const out = new Set<number>()
    for (const [n, places] of sides.entries()) if (fits[places[side] ?? 0]) out.add(n)
    return out
  }
}

/** Looks records up by id or alias and works out once what the checks ask of each. */
export function createFinder(knowledge: Knowledge, roles: RoleTree): (id: string) => Subject | null {
  const made = new Map<string, Subject>()
  const blends = blendIndex(knowledge)
  const limitsOf = limitIndex(knowledge)
  const sidesOf = sideIndex(knowledge)

  const enrich = (ingredient: Ingredient): Subject => {
    const { id, classes } = ingredient
    const allRoles = new Set(ingredient.roles.flatMap((claim) => roles.above(claim.role)))
    const selectable = { id, classes, allRoles }
    const clashSides = [sidesOf(selectable, 0), sidesOf(selectable, 1)] as const
    const subject: Subject = { ...ingredient, allRoles, parts: [], clashSides, limits: limitsOf(id, classes) }
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
