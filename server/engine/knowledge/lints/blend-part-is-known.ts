import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Guards against a blend of unknown or impossible parts: what is in it would escape every rule. */
export const blendPartIsKnown: Lint = (_raw, { ingredients, inventory, aliases }) =>
  [...ingredients.values()].flatMap((ingredient) =>
    ingredient.madeOf.flatMap(({ ingredient: part, share_percent }, at) => {
      const path = `${fileOf(ingredient)}/made_of/${at}`
      if (part === ingredient.id) return [{ path, message: 'a blend is not made of itself' }]
      if (!ingredients.has(part) && !inventory.has(part) && !aliases.has(part))
        return [{ path, message: `${part} is not known` }]
      if (!(share_percent > 0 && share_percent <= 100))
        return [{ path, message: `share_percent: expected above 0 to 100, got ${String(share_percent)}` }]
      return []
    }),
  )
