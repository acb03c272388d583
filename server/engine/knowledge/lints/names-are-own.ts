import { normalName } from '#engine/knowledge/normal-name.ts'
import type { Ingredient } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Guards against an exact name that two records claim: whoever types it would get one of them by chance. */
export const namesAreOwn: Lint = (_raw, { ingredients }) => {
  const owners = new Map<string, Ingredient>()
  for (const ingredient of ingredients.values()) owners.set(normalName(ingredient.inci), ingredient)
  return [...ingredients.values()].flatMap((ingredient) =>
    [...new Set(ingredient.names.exact.map(normalName))].flatMap((name) => {
      const owner = owners.get(name) ?? ingredient
      owners.set(name, owner)
      if (owner === ingredient) return []
      return [
        {
          path: `${fileOf(ingredient)}/names/exact`,
          message: `"${name}" is also a name of ${owner.id}; keep it where it belongs or make it a broad name of both`,
        },
      ]
    }),
  )
}
