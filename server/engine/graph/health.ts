import type { Ingredient } from '#engine/model/records.ts'
import type { World } from './world.ts'

/** Statements of a record that carry a source of their own. */
function claimsIn(one: Ingredient): number {
  const facts = [...one.facts.values()].reduce((sum, claims) => sum + claims.length, 0)
  const lists = [one.roles, one.clashes, one.needs, one.boostedBy, one.inactivatedBy, one.standsFor, one.notFor]
  return facts + one.classes.size + lists.reduce((sum, list) => sum + list.length, 0)
}

/** Size of the graph: recorded ingredients, their statements, and the edges that those make. */
export function healthOf({ knowledge, graph }: World) {
  return {
    status: 'ok' as const,
    graph: {
      version: knowledge.version,
      ingredients: knowledge.ingredients.size,
      roles: knowledge.roles.size,
      classes: knowledge.classes.size,
      edges: graph.size,
      claims: [...knowledge.ingredients.values()].reduce((sum, one) => sum + claimsIn(one), 0),
    },
  }
}
