import type { Ingredient, Role } from '#engine/model/records.ts'
import type { Selectable } from '#engine/knowledge/selector.ts'
import type { Vocabulary } from './lint.ts'

export interface Member extends Selectable {
  ingredient: Ingredient
}

/** The role itself and every broader one; a circle ends where it closes. */
export function upFrom(role: string, roles: ReadonlyMap<string, Role>): string[] {
  const chain: string[] = []
  for (let at: string | undefined = role; at !== undefined && !chain.includes(at); at = roles.get(at)?.broader) {
    chain.push(at)
  }
  return chain
}

const memo = new WeakMap<ReadonlyMap<string, Ingredient>, readonly Member[]>()

/** All records with their classes and roles, as selectors ask for them. Several lints read it, so it is made once. */
export function membersOf({ ingredients, roles }: Vocabulary): readonly Member[] {
  const known = memo.get(ingredients)
  if (known) return known
  const chains = new Map([...roles.keys()].map((role) => [role, upFrom(role, roles)]))
  const members = [...ingredients.values()].map((ingredient) => ({
    id: ingredient.id,
    ingredient,
    classes: ingredient.classes,
    allRoles: new Set(ingredient.roles.flatMap(({ role }) => chains.get(role) ?? [role])),
  }))
  memo.set(ingredients, members)
  return members
}
