import { shortestBeginningWith } from './beginnings.ts'
import { finderOf } from './find-names.ts'
import type { NameFinder } from './find-names.ts'
import type { NameHit } from './name-index.ts'
import { normalName, squashed, wordBag } from './normal-name.ts'
import type { Knowledge } from './knowledge.ts'

/** How a text led to a name: the name itself, its words in another order, its beginning, or a likeness. */
export type FoundBy = 'name' | 'words' | 'beginning' | 'likeness'

export interface FoundName {
  id: string
  /** normal form of the name that fitted; of a name in another order, the words as typed */
  name: string
  by: FoundBy
}

/** Likeness below which a name is no help to someone who mistyped. */
const LEAST_LIKENESS = 0.6

/** Likeness of the letters below which a name that only sounds alike is none. */
const LEAST_WRITTEN = 0.45

/** What a text is the name of points at itself first, then at what goes by it in other ways. */
const inciFirst = (hits: readonly NameHit[]): readonly NameHit[] =>
  hits.length < 2 ? hits : [...hits.filter(({ why }) => why === 'inci'), ...hits.filter(({ why }) => why !== 'inci')]

/** Inventory names that go on from a text, its marks and spaces read as they were typed: "peg-7/", "caffeine ". */
function* asWritten(finder: NameFinder, typed: string, most: number): Generator<[string, readonly NameHit[]]> {
  const text = typed.trimStart().replace(/\s+/g, ' ').toLowerCase()
  for (const written of shortestBeginningWith(finder.written, text, most)) {
    const name = normalName(written)
    yield [name, finder.byName.get(name) ?? []]
  }
}

/** Names that fit, the surest way of fitting first; likeness is asked only where the surer ways leave room. */
function* namesLike(finder: NameFinder, typed: string, most: number): Generator<[string, FoundBy, readonly NameHit[]]> {
  const text = normalName(typed)
  const same = finder.byName.get(text) ?? finder.bySquash.get(squashed(text))
  if (same) yield [text, 'name', same]
  for (const [name, hits] of asWritten(finder, typed, most)) yield [name, 'beginning', hits]
  for (const name of shortestBeginningWith(finder.sorted, text, most))
    yield [name, 'beginning', finder.byName.get(name) ?? []]
  const words = finder.byBag.get(wordBag(text))
  if (words) yield [text, 'words', words]
  for (const { name, score, written } of finder.near.search(text))
    if (score >= LEAST_LIKENESS && written >= LEAST_WRITTEN) yield [name, 'likeness', finder.byName.get(name) ?? []]
}

/**
 * A pick list for a typed text: known names, whole or begun, in any order of words, misspelt or misheard. It ranks and
 * never decides: what a person meant is read by `resolveNames`, which asks where a near name can hurt.
 * @param most length of the list
 */
export function searchNames(knowledge: Knowledge, typed: string, most: number): FoundName[] {
  const found = new Map<string, FoundName>()
  if (normalName(typed) === '') return []
  for (const [name, by, hits] of namesLike(finderOf(knowledge), typed, most)) {
    for (const { id } of inciFirst(hits)) if (!found.has(id)) found.set(id, { id, name, by })
    if (found.size >= most) break
  }
  return [...found.values()].slice(0, most)
}
