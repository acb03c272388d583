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

const usualOf = ({ facts }: Ingredient): number => facts.get('usual')?.[0]?.value ?? 0

/** The most usual records of the real world with what is named, and with the parts of all their blends. */
export function worldOfUsual({ knowledge }: World, size: number, named: Iterable<string>): World {
  const ingredients = new Map<string, Ingredient>()
  const take = (id: string): void => {
    const one = knowledge.ingredients.get(id)
    if (!one || ingredients.has(id)) return
    ingredients.set(id, one)
    for (const part of one.madeOf) take(part.ingredient)
  }
  for (const id of named) take(id)
  const byUse = [...knowledge.ingredients.values()].sort((a, b) => usualOf(b) - usualOf(a) || (a.id < b.id ? -1 : 1))
  for (const { id } of byUse) if (ingredients.size < size) take(id)
  return buildWorld({ ...knowledge, ingredients })
}
