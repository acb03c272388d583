import { buildWorld } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { pick, random } from './random.ts'

type Ingredients = World['knowledge']['ingredients']
type Ingredient = Ingredients extends ReadonlyMap<string, infer One> ? One : never

/** Made-up ids share no word with real names, so that no name search finds them. */
const madeUpId = (n: number): string => `made-up-${String(n).padStart(6, '0')}`

/** A twin of a real record under another name: same roles, windows, levels and clashes, nothing said of pairs. */
const twinOf = (one: Ingredient, n: number): Ingredient => ({
  ...one,
  id: madeUpId(n),
  inci: madeUpId(n).toUpperCase(),
  cas: [],
  standsFor: [],
  notFor: [],
})

/** The real world with seeded twins of its records until it holds so many ingredients. */
export function grownWorld({ knowledge }: World, size: number, seed = 5): World {
  const rnd = random(seed)
  const originals = [...knowledge.ingredients.values()]
  const ingredients = new Map(knowledge.ingredients)
  for (let n = 0; ingredients.size < size; n++) {
    const twin = twinOf(pick(rnd, originals), n)
    ingredients.set(twin.id, twin)
  }
  return buildWorld({ ...knowledge, ingredients })
}
