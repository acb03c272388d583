import type { Knowledge } from './knowledge.ts'
import type { NameHit } from './name-index.ts'
import { squashed, wordBag } from './normal-name.ts'
import { buildNearNames } from './near-names.ts'
import type { NearNames } from './near-names.ts'

/** Looser keys of every name, each pointing at what the name may mean. Built once for a body of knowledge. */
export interface NameFinder {
  byName: ReadonlyMap<string, readonly NameHit[]>
  bySquash: ReadonlyMap<string, readonly NameHit[]>
  byBag: ReadonlyMap<string, readonly NameHit[]>
  /** all normal names in order, for completing a beginning */
  sorted: readonly string[]
  /** inventory names as they are written, in lower case, in order */
  written: readonly string[]
  /** names that consist of words */
  all: readonly string[]
  /** word → places in `all` of the names that hold it, ascending */
  byWord: ReadonlyMap<string, readonly number[]>
  near: NearNames
}

type Hits = Map<string, readonly NameHit[]>

function addTo(map: Hits, key: string, hits: readonly NameHit[]): void {
  if (key === '') return
  const known = map.get(key)
  if (known === hits) return
  map.set(key, known ? [...known, ...hits.filter((hit) => !known.some((k) => k.id === hit.id))] : hits)
}

/** Alphabetic order would mix up which number belongs to which word. */
const hasOneNumber = (bag: string): boolean => (bag.match(/\d+/g) ?? []).length < 2

function buildFinder({ names, inventory }: Knowledge): NameFinder {
  const bySquash: Hits = new Map()
  const byBag: Hits = new Map()
  const all: string[] = []
  const byWord = new Map<string, number[]>()
  for (const [name, meanings] of names.byName) {
    if (/^[\d ]+$/.test(name)) continue // CAS numbers are looked up as they are
    const hits = meanings.filter((hit) => hit.why !== 'cas')
    if (hits.length === 0) continue
    addTo(bySquash, squashed(name), hits)
    const bag = wordBag(name)
    if (hasOneNumber(bag)) addTo(byBag, bag, hits)
    for (const word of new Set(bag.split(' '))) {
      const list = byWord.get(word)
      if (list) list.push(all.length)
      else byWord.set(word, [all.length])
    }
    all.push(name)
  }
  const sorted = [...names.byName.keys()].filter((name) => /[a-z]/.test(name)).sort()
  const written = [...inventory.values()].map(({ inci }) => inci.toLowerCase()).sort()
  return { byName: names.byName, bySquash, byBag, sorted, written, all, byWord, near: buildNearNames(sorted) }
}

const finders = new WeakMap<Knowledge, NameFinder>()

export function finderOf(knowledge: Knowledge): NameFinder {
  const known = finders.get(knowledge)
  if (known) return known
  const made = buildFinder(knowledge)
  finders.set(knowledge, made)
  return made
}
