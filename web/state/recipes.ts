import { isSameBench, withoutRecipe } from './bench.ts'
import type { Bench } from './bench.ts'
import { isBench } from './storage.ts'

/** One of the person's recipes as it is kept on this device. */
export interface KeptRecipe {
  id: string
  bench: Bench
  /** when it was last changed, ISO 8601 */
  changed: string
}

const KEY = 'understudy-recipes'
const SET_ASIDE = 'understudy-recipes-unreadable'
const VERSION = 1
/** The browser gives about 5 MB to a site, a recipe takes some kilobytes. */
export const MOST_RECIPES = 300

type Store = Pick<Storage, 'getItem' | 'setItem'>
const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

const isKept = (value: unknown): value is KeptRecipe =>
  isObject(value) &&
  typeof value['id'] === 'string' &&
  typeof value['changed'] === 'string' &&
  Number.isFinite(Date.parse(value['changed'])) &&
  isBench(value['bench'])

/** An id that no recipe has or had: a removed one may still stand in the history of the bench. */
export function freshRecipeId(recipes: readonly { id: string }[], now: Date): string {
  const from = `r${now.getTime().toString(36)}`
  const taken = (id: string) => recipes.some((one) => one.id === id)
  if (!taken(from)) return from
  const numbers = Array.from({ length: recipes.length + 1 }, (_, n) => `${from}-${n}`)
  return numbers.find((id) => !taken(id)) ?? from
}

export const isBlank = ({ lines, notes }: Bench): boolean => lines.length === 0 && notes.trim() === ''

/** Gives a bench that belongs to no recipe yet an id of its own, once there is something on it. */
export const withRecipeId = (recipes: readonly KeptRecipe[], bench: Bench, now: Date): Bench =>
  bench.recipe !== undefined || isBlank(bench) ? bench : { ...bench, recipe: freshRecipeId(recipes, now) }

/** The recipes of this device, the one changed last first. What cannot be read is put aside, never thrown away. */
export function loadRecipes(store: Store): KeptRecipe[] {
  try {
    const text = store.getItem(KEY)
    if (text === null) return []
    const kept: unknown = JSON.parse(text)
    const list =
      isObject(kept) && kept['version'] === VERSION && Array.isArray(kept['recipes']) ? kept['recipes'] : null
    const sound = (list ?? []).filter(isKept)
    if (list === null || sound.length < list.length) store.setItem(SET_ASIDE, text)
    return byChange(sound)
  } catch {
    return [] // storage is forbidden or holds no JSON: the bench works on without a list
  }
}

/** @returns false when the browser refuses to keep them */
export function saveRecipes(store: Store, recipes: readonly KeptRecipe[]): boolean {
  try {
    store.setItem(KEY, JSON.stringify({ version: VERSION, recipes: byChange(recipes).slice(0, MOST_RECIPES) }))
    return true
  } catch {
    return false
  }
}

const byChange = (recipes: readonly KeptRecipe[]): KeptRecipe[] =>
  [...recipes].sort((a, b) => Date.parse(b.changed) - Date.parse(a.changed) || (a.id < b.id ? -1 : 1))

/** Takes the bench into the list under its own id; one that says nothing new keeps its date, an emptied one stays as it was. */
export function withBench(recipes: readonly KeptRecipe[], bench: Bench, now: Date): readonly KeptRecipe[] {
  const { recipe: id } = bench
  if (id === undefined || isBlank(bench)) return recipes
  const old = recipes.find((one) => one.id === id)
  if (old && isSameBench(old.bench, bench)) return recipes
  const kept = { id, bench: withoutRecipe(bench), changed: now.toISOString() }
  return byChange([kept, ...recipes.filter((one) => one !== old)])
}

/** The bench of a kept recipe, ready to be opened. */
export const benchOf = ({ id, bench }: KeptRecipe): Bench => ({ ...bench, recipe: id })

/**
 * A bench that came from outside (a link): one's own recipe when it says the same, else a new one. It never takes the
 * place of a recipe that differs.
 */
export function asOwn(recipes: readonly KeptRecipe[], bench: Bench, now: Date): Bench {
  const same = recipes.find((one) => isSameBench(one.bench, bench))
  return { ...bench, recipe: same?.id ?? freshRecipeId(recipes, now) }
}

/** A copy under a name of its own. */
export function copyOf(recipes: readonly KeptRecipe[], { bench }: KeptRecipe, title: string, now: Date): KeptRecipe {
  return { id: freshRecipeId(recipes, now), bench: { ...bench, title }, changed: now.toISOString() }
}
