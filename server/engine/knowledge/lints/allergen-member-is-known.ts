import type { Lint } from './lint.ts'

/** Guards against a declared allergen that no name brings: it would never stand on a label. */
export const allergenMemberIsKnown: Lint = (raw, { allergens, ingredients, inventory, aliases }) => {
  const path = raw.allergens[0]?.path ?? 'allergens'
  return allergens.flatMap(({ label, members }) => [
    ...(members.length === 0 ? [{ path, message: `${label}: nothing brings it` }] : []),
    ...members
      .filter((id) => !ingredients.has(id) && !inventory.has(id) && !aliases.has(id))
      .map((id) => ({ path, message: `${label}: ${id} is not known` })),
  ])
}
