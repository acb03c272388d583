import { normalName } from '#engine/knowledge/name-index.ts'
import { searchNames } from '#engine/knowledge/search-names.ts'
import type { Ingredient } from '#engine/model/records.ts'
import { deriveFromInventory } from './derive-from-inventory.ts'
import { asksForValues, clashByRecord, entryOf, questionOf } from './ingredient-screen.ts'
import type { IngredientTraits } from './ingredient-screen.ts'
import { buildScreen, fits } from './screen.ts'
import type { Screen, ScreenQuestion } from './screen.ts'
import { shortRecord } from './short-record.ts'
import type { ShortRecord } from './short-record.ts'
import type { World } from './world.ts'

export interface IngredientQuery extends IngredientTraits {
  /** words, each the beginning of a word of one name; where no name fits, what is near it */
  text?: string
  /** takes in what would fit but for a value that is not known */
  unknown?: 'include'
  limit?: number
  /** last id of the page before */
  after?: string
}

export interface IngredientPage {
  ingredients: ShortRecord[]
  /** id to go on after, or null on the last page */
  next: string | null
  total: number
  /** how many more may fit: a value that was asked for is not known of them; only where values were asked for */
  notKnown?: number
}

const USUAL_LIMIT = 50
const MOST = 200
/** Names that are only like the text: more is no help to someone who mistyped. */
const MOST_NEAR = 10

/** Ids that carry a name with all these words, each the beginning of a word of it, in any order. */
export function idsNamed(world: World, text: string): string[] {
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

/** Record of an id, or what is derived for a name of the inventory; null when neither. */
export function candidateOf(world: World, id: string): Ingredient | null {
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

const SCREENS = new WeakMap<World, Screen>()

/** The index of all records; built at the first question. */
function screenOf(world: World): Screen {
  const known = SCREENS.get(world)
  if (known) return known
  const made = buildScreen(world.subjects.map((subject) => entryOf(world, subject, subject)))
  SCREENS.set(world, made)
  return made
}

/** Place in the order of all: records first, then names that stand only in the inventory, each by id. */
const placeOf = (world: World, id: string): string => `${world.knowledge.ingredients.has(id) ? 0 : 1} ${id}`

/** What carries the words; where nothing does, what is written or sounds nearly so, the likest first. */
function candidates(world: World, text: string): Ingredient[] {
  const named = idsNamed(world, text)
    .map((id) => ({ id, place: placeOf(world, id) }))
    .sort((a, b) => (a.place < b.place ? -1 : 1))
    .map(({ id }) => id)
  const ids = named.length > 0 ? named : searchNames(world.knowledge, text, MOST_NEAR).map(({ id }) => id)
  return ids.flatMap((id) => candidateOf(world, id) ?? [])
}

/** Takes out what a record says to clash with one of those it is to stand beside. */
function withoutClashes(world: World, found: readonly Ingredient[], beside: IngredientQuery['beside']): Ingredient[] {
  return found.filter(({ id }) => {
    const subject = world.find(id)
    return subject !== null && !(beside ?? []).some((other) => clashByRecord(subject, other))
  })
}

type Finder = (question: ScreenQuestion) => Ingredient[]

/** With a text its names are looked through one by one, without one the index answers for all records. */
function finderFor(world: World, { text = '', beside }: IngredientQuery): Finder {
  if (text.trim() === '')
    return (question) =>
      screenOf(world)
        .find(question)
        .flatMap((n) => world.subjects[n] ?? [])
  const all = candidates(world, text)
  const isFree = ({ all: lists = [], none = [], within = [] }: ScreenQuestion): boolean =>
    lists.length + none.length + within.length === 0
  const entryFor = (ingredient: Ingredient) => entryOf(world, ingredient, beside ? world.find(ingredient.id) : null)
  return (question) => (isFree(question) ? all : all.filter((ingredient) => fits(entryFor(ingredient), question)))
}

/** Where a page begins behind an id, which need not be among those found. */
function startAfter(world: World, found: readonly Ingredient[], after: string | undefined): number {
  if (after === undefined) return 0
  const at = found.findIndex(({ id }) => id === after)
  if (at >= 0) return at + 1
  const next = found.findIndex(({ id }) => placeOf(world, id) > placeOf(world, after))
  return next < 0 ? found.length : next
}

/**
 * A page of ingredients: records first, then names that stand only in the inventory (those only when a text is
 * given), each by id; near names, the likest first, where no name holds the words of the text.
 * @param query.limit 1 to 200, 50 when left out
 */
export function findIngredients(world: World, query: IngredientQuery): IngredientPage {
  const screen = finderFor(world, query)
  const find: Finder = (question) =>
    query.beside ? withoutClashes(world, screen(question), query.beside) : screen(question)
  const found = find(questionOf(query, query.unknown === 'include'))
  const counts = asksForValues(query) && query.unknown !== 'include'
  const notKnown = counts ? find(questionOf(query, true)).length - found.length : null
  const start = startAfter(world, found, query.after)
  const page = found.slice(start, start + Math.min(query.limit ?? USUAL_LIMIT, MOST))
  const last = page.at(-1)
  return {
    ingredients: page.map(shortRecord),
    next: last !== undefined && last !== found.at(-1) ? last.id : null,
    total: found.length,
    ...(notKnown !== null && { notKnown }),
  }
}
