import { beginningWith } from '#engine/knowledge/beginnings.ts'
import { finderOf } from '#engine/knowledge/find-names.ts'
import type { NameFinder } from '#engine/knowledge/find-names.ts'
import { wordBag } from '#engine/knowledge/normal-name.ts'
import { usualOf } from './reading.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

/** Parts of a plant: a name without them means the usual part, when one alone is in use. */
const PLANT_PARTS = new Set(
  'seed fruit kernel leaf flower herb bran germ nut peel root bark wood bud stem rhizome bulb berry needle'.split(' '),
)
/** What is made of a plant; a name that ends so says what it is. */
const MADE = 'oil butter extract water wax cera juice powder starch gum flour resin protein acid'.split(' ')

const MOST = 10

/** Beginnings with more names than this say nothing. */
const MOST_BEGUN = 400

const idsOf = (finder: NameFinder, names: readonly string[]): string[] => [
  ...new Set(names.flatMap((name) => (finder.byName.get(name) ?? []).map((hit) => hit.id))),
]

/** "behentrimonium metho": the last word breaks off, the number of words is the same. */
function completed(finder: NameFinder, key: string): string | null {
  const words = key.split(' ')
  const last = words.at(-1) ?? ''
  if (words.length < 2 || last.length < 4 || /\d/.test(last)) return null
  const names = beginningWith(finder.sorted, key, MOST_BEGUN).filter((name) => name.split(' ').length === words.length)
  const ids = idsOf(finder, names)
  return ids.length === 1 ? (ids[0] ?? null) : null
}

/** Numbers that stand in both of two ascending lists. */
function common(a: readonly number[], b: readonly number[]): number[] {
  const out: number[] = []
  for (let i = 0, j = 0; i < a.length && j < b.length;) {
    const one = a[i] ?? 0
    const other = b[j] ?? 0
    if (one === other) out.push(one)
    if (one <= other) i++
    if (other <= one) j++
  }
  return out
}

/** Names that hold all words typed. */
function holding(finder: NameFinder, words: readonly string[]): string[] {
  const lists = words.map((word) => finder.byWord.get(word) ?? []).sort((a, b) => a.length - b.length)
  const [first = [], ...others] = lists
  return others.reduce(common, first).map((index) => finder.all[index] ?? '')
}

/** "Vitis vinifera oil": only the plant part is missing, and one part alone is known or in use. */
function withPart(world: World, finder: NameFinder, words: readonly string[], names: readonly string[]): string | null {
  if (words.length < 3 || !words.some((word) => MADE.includes(word))) return null
  const fitting = names.filter((name) =>
    wordBag(name)
      .split(' ')
      .every((word) => words.includes(word) || PLANT_PARTS.has(word)),
  )
  const ids = idsOf(finder, fitting)
  if (ids.length === 1) return ids[0] ?? null
  const used = ids.filter((id) => world.knowledge.ingredients.has(id))
  return used.length === 1 ? (used[0] ?? null) : null
}

/** One of each kind first (oil, extract, water ...), then the rest; the usual and the short names lead. */
function varied(world: World, ids: readonly string[]): string[] {
  const { knowledge } = world
  const ranked = [...ids].sort(
    (a, b) => usualOf(knowledge, b) - usualOf(knowledge, a) || a.length - b.length || (a < b ? -1 : 1),
  )
  const kinds = new Set<string>()
  const firsts = ranked.filter((id) => {
    const kind = MADE.find((word) => id.endsWith(word)) ?? ''
    if (kinds.has(kind)) return false
    kinds.add(kind)
    return true
  })
  return [...new Set([...firsts, ...ranked])].slice(0, MOST)
}

/** Reads a name of which a word is missing or breaks off. A question unless only one name fits. */
export function readPartial(world: World, key: string): Reading | null {
  const finder = finderOf(world.knowledge)
  const whole = completed(finder, key)
  if (whole !== null) return { kind: 'found', id: whole, note: 'the last word is cut short' }
  const words = wordBag(key)
    .split(' ')
    .filter((word) => word !== '')
  if (words.length === 0) return null
  const names = holding(finder, words)
  const part = withPart(world, finder, words, names)
  if (part !== null) return { kind: 'found', id: part, note: 'the plant part is taken from the only one in use' }
  const mayBreakOff = key.length >= 4 && (words.length <= 2 || names.length === 0)
  const begun = mayBreakOff ? beginningWith(finder.sorted, key, MOST_BEGUN) : []
  const ids = varied(world, [...new Set([...idsOf(finder, names), ...idsOf(finder, begun)])])
  if (ids.length === 0) return null
  const why = 'holds the words typed; a word is missing'
  return { kind: 'ask', choices: ids.map((id) => ({ id, score: 0.6, why })), note: 'a word seems to be missing' }
}
