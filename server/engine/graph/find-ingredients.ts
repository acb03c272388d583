import { normalName } from '#engine/knowledge/name-index.ts'
import type { Ingredient } from '#engine/model/records.ts'
import { deriveFromInventory } from './derive-from-inventory.ts'
import { shortRecord } from './short-record.ts'
import type { ShortRecord } from './short-record.ts'
import type { World } from './world.ts'

export interface IngredientQuery {
  /** words, each the beginning of a word of one name */
  text?: string
  /** this role or a narrower one */
  role?: string
  class?: string
  limit?: number
  /** last id of the page before */
  after?: string
}

export interface IngredientPage {
  ingredients: ShortRecord[]
  /** id to go on after, or null on the last page */
  next: string | null
  total: number
}

const USUAL_LIMIT = 50
const MOST = 200

/** Ids that carry a name with all these words, in any order. */
function idsNamed(world: World, text: string): string[] {
  const name = normalName(text)
  if (name === '') return [] // signs only, or a script that no name is written in
  const words = name.split(' ').map((word) => ` ${word}`)
  const ids = new Set<string>()
  for (const [known, hits] of world.knowledge.names.byName) {
    const padded = ` ${known}`
    if (words.every((word) => padded.includes(word))) for (const hit of hits) ids.add(hit.id)
  }
  return [...ids]
}

/** Kept for a filter over the whole inventory; a full look-up of each would cost seconds and memory for good. */
const DERIVED = new WeakMap<object, Ingredient>()

function ingredientOf(world: World, id: string): Ingredient | null {
  const record = world.knowledge.ingredients.get(id)
  if (record) return record
  const row = world.knowledge.inventory.get(id)
  if (!row) return null
  const known = DERIVED.get(row)
  if (known) return known
  const derived = deriveFromInventory(row)
  DERIVED.set(row, derived)
  return derived
}

function fits(ingredient: Ingredient, query: IngredientQuery, world: World): boolean {
  const { role } = query
  if (query.class !== undefined && !ingredient.classes.has(query.class)) return false
  return role === undefined || ingredient.roles.some((claim) => world.roles.above(claim.role).includes(role))
}

/**
 * A page of ingredients: records first, then names that stand only in the inventory (those only when a text is
 * given), each by id.
 * @param query.limit 1 to 200, 50 when left out
 */
export function findIngredients(world: World, query: IngredientQuery): IngredientPage {
  const ids = (query.text ?? '').trim() === '' ? world.subjects.map(({ id }) => id) : idsNamed(world, query.text ?? '')
  const place = (id: string): string => `${world.knowledge.ingredients.has(id) ? 0 : 1} ${id}`
  const found = ids
    .flatMap((id) => ingredientOf(world, id) ?? [])
    .filter((ingredient) => fits(ingredient, query, world))
    .sort((a, b) => (place(a.id) < place(b.id) ? -1 : 1))
  const { after } = query
  const rest = after === undefined ? found : found.filter(({ id }) => place(id) > place(after))
  const page = rest.slice(0, Math.min(query.limit ?? USUAL_LIMIT, MOST)).map(shortRecord)
  return { ingredients: page, next: rest.length > page.length ? (page.at(-1)?.id ?? null) : null, total: found.length }
}
