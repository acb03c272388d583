import type { Ingredient } from '#engine/model/records.ts'
import { deriveFromInventory } from './derive-from-inventory.ts'
import type { Subject } from './subject.ts'
import type { World } from './world.ts'

type ByRole = ReadonlyMap<string, readonly Ingredient[]>

const indexOf = new WeakMap<World, ByRole>()

/** Names that stand only in the inventory, by every role that their functions give them; worked out when first asked for. */
function inventoryByRole(world: World): ByRole {
  const known = indexOf.get(world)
  if (known) return known
  const { knowledge, roles } = world
  const byRole = new Map<string, Ingredient[]>()
  for (const [id, row] of knowledge.inventory) {
    if (knowledge.ingredients.has(id) || knowledge.aliases.has(id)) continue
    const ingredient = deriveFromInventory(row)
    for (const role of new Set(ingredient.roles.flatMap((claim) => roles.above(claim.role)))) {
      const list = byRole.get(role)
      if (list) list.push(ingredient)
      else byRole.set(role, [ingredient])
    }
  }
  indexOf.set(world, byRole)
  return byRole
}

/**
 * Inventory names that play a role and share most classes with an ingredient; nearest first, ties by id. All that is
 * known of them is derived from function and name, so where none plays the role itself the next broader one is taken.
 */
export function nearestOfInventory(world: World, missing: Subject, role: string, most: number): Subject[] {
  const shared = ({ classes }: Ingredient): number => [...classes].filter((one) => missing.classes.has(one)).length
  const byRole = inventoryByRole(world)
  for (const here of world.roles.above(role)) {
    const near = (byRole.get(here) ?? [])
      .map((ingredient) => ({ id: ingredient.id, near: shared(ingredient) }))
      .filter((one) => one.near > 0)
      .sort((a, b) => b.near - a.near || (a.id < b.id ? -1 : 1))
    if (near.length > 0) return near.slice(0, most).flatMap(({ id }) => world.find(id) ?? [])
  }
  return []
}
