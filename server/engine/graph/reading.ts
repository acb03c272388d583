import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import type { NameHit } from '#engine/knowledge/name-index.ts'
import type { World } from './world.ts'

/** One possible meaning of a typed name. */
export interface Choice {
  ingredient: string
  inci: string
  /** how near the typed text is, 0 to 1 */
  score: number
  why: string
}

/** What a person meant by a typed name. */
export interface ResolveResult {
  typed: string
  status: 'found' | 'ask' | 'unknown'
  ingredient: string | null
  inci: string | null
  tier: 'full' | 'short' | 'inventory' | null
  note?: string
  choices: Choice[]
}

/** What a text may mean before it is put into a reply. */
export type Reading =
  | { kind: 'found'; id: string; note?: string; score?: number }
  | { kind: 'ask'; choices: { id: string; score: number; why: string }[]; note?: string }
  | { kind: 'not-here'; note: string }

/** A class word and its members would fill a page; more than this nobody reads. */
const MOST_CHOICES = 10

/** INCI name and depth of knowledge of an id; null when there is no such thing. */
export function nameOf(world: World, id: string): { id: string; inci: string; tier: ResolveResult['tier'] } | null {
  const { ingredients, inventory, aliases } = world.knowledge
  const own = aliases.get(id) ?? id
  const record = ingredients.get(own)
  if (record) return { id: own, inci: record.inci, tier: record.tier }
  const row = inventory.get(own)
  if (row) return { id: own, inci: row.inci, tier: 'inventory' }
  const blend = own.includes('-and-') ? world.find(own) : null
  return blend && { id: blend.id, inci: blend.inci, tier: blend.tier }
}

/** How usual a thing is in small batches, 0 (only in the inventory) to 5. */
export function usualOf({ ingredients }: Knowledge, id: string): number {
  const usual = ingredients.get(id)?.facts.get('usual')?.[0]
  return usual?.value ?? usual?.min ?? (ingredients.has(id) ? 1 : 0)
}

const WHY: Record<string, string> = {
  inci: 'its inventory name',
  cas: 'carries this CAS number',
  exact: 'goes by this name',
  former: 'went by this name',
  foreign: 'goes by this name in another language',
  narrow: 'a kind of it goes by this name',
  broad: 'one of several that go by this name',
}

const choiceOf = (hit: NameHit, score: number) => ({ id: hit.id, score, why: WHY[hit.why] ?? '' })

/** An abbreviation that is also the whole inventory name of something else. */
const isAbbreviation = (key: string): boolean => key.length <= 5 && !key.includes(' ')

const idsOf = (hits: readonly NameHit[]): string[] => [...new Set(hits.map((hit) => hit.id))]

/** Whether an inventory entry is the record under another name: it has none of its own, and no CAS number speaks against it. */
function isSame({ ingredients, inventory }: Knowledge, entry: string, record: string): boolean {
  if (ingredients.has(entry)) return false
  const cas = inventory.get(entry)?.cas ?? []
  const recordCas = [...(ingredients.get(record)?.cas ?? []), ...(inventory.get(record)?.cas ?? [])]
  return cas.length === 0 || cas.some((number) => recordCas.includes(number))
}

/** One meaning, or the question which of several is meant. */
export function readingOf(key: string, hits: readonly NameHit[], knowledge: Knowledge): Reading {
  const of = (...whys: string[]) => hits.filter((hit) => whys.includes(hit.why))
  const inci = idsOf(of('inci'))
  const named = idsOf(of('exact', 'former', 'foreign'))
  const [first] = inci
  // A record that goes by the name of an entry without a record is that entry under its other inventory name.
  const [owner] = named.filter((id) => knowledge.ingredients.has(id))
  if (first !== undefined && owner !== undefined && named.length === 1 && isSame(knowledge, first, owner)) {
    return { kind: 'found', id: owner }
  }
  if (first !== undefined && inci.length === 1) {
    if (!(isAbbreviation(key) && named.some((id) => id !== first))) return { kind: 'found', id: first }
  }
  const narrow = idsOf(of('narrow'))
  const cas = idsOf(of('cas'))
  for (const ids of [inci.length > 0 ? [] : named, narrow, cas]) {
    const [only] = ids
    if (only !== undefined && ids.length === 1) return { kind: 'found', id: only }
    if (ids.length > 1) break
  }
  const records = cas.filter((id) => knowledge.ingredients.has(id))
  if (cas.length > 1 && records.length === 1 && records[0] !== undefined) {
    return { kind: 'found', id: records[0], note: 'other inventory names share this CAS number' }
  }
  const rank = (hit: NameHit) => usualOf(knowledge, hit.id)
  const seen = new Set<string>()
  const choices = [...hits]
    .sort((a, b) => rank(b) - rank(a) || (a.id < b.id ? -1 : 1))
    .filter((hit) => !seen.has(hit.id) && seen.add(hit.id))
    .map((hit) => choiceOf(hit, hit.why === 'broad' ? 0.8 : 0.9))
  return { kind: 'ask', choices, note: 'this name stands for more than one ingredient' }
}

/** Puts a reading into the shape of a reply. */
export function replyOf(world: World, typed: string, reading: Reading | null): ResolveResult {
  const { say } = world
  const nothing = { typed, ingredient: null, inci: null, tier: null, choices: [] }
  if (reading === null) return { ...nothing, status: 'unknown' }
  if (reading.kind === 'not-here') return { ...nothing, status: 'unknown', note: say.text(reading.note) }
  const note = reading.note ? { note: say.text(reading.note) } : {}
  if (reading.kind === 'found') {
    const name = nameOf(world, reading.id)
    if (!name) return { ...nothing, status: 'unknown' }
    return { typed, status: 'found', ingredient: name.id, inci: name.inci, tier: name.tier, ...note, choices: [] }
  }
  const seen = new Set<string>()
  const choices = reading.choices.flatMap(({ id, score, why }) => {
    const name = nameOf(world, id)
    if (!name || seen.has(name.id)) return []
    seen.add(name.id)
    return [{ ingredient: name.id, inci: name.inci, score: Math.round(score * 100) / 100, why: say.text(why) }]
  })
  if (choices.length === 0 && reading.note === undefined) return { ...nothing, status: 'unknown' }
  return { ...nothing, status: 'ask', ...note, choices: choices.slice(0, MOST_CHOICES) }
}
