import { partsOf } from '#engine/knowledge/clean-name.ts'
import type { CleanName } from '#engine/knowledge/clean-name.ts'
import { finderOf } from '#engine/knowledge/find-names.ts'
import type { NameFinder } from '#engine/knowledge/find-names.ts'
import { normalName, wordBag } from '#engine/knowledge/normal-name.ts'
import { readExactly } from './read-exactly.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

const idsOf = (reading: Reading | null): string[] =>
  reading?.kind === 'found' ? [reading.id] : reading?.kind === 'ask' ? reading.choices.map((choice) => choice.id) : []

/** Likeness of the whole text to another name from which an unread bracket may name something else. */
const LIKE_ANOTHER = 0.85

/** Ids that go by a name which holds all these words. */
function idsHolding(finder: NameFinder, words: readonly string[]): Set<string> {
  const places = words.map((word) => new Set(finder.byWord.get(word) ?? []))
  const [first = new Set<number>(), ...others] = places
  const names = [...first].filter((place) => others.every((set) => set.has(place)))
  return new Set(names.flatMap((place) => finder.byName.get(finder.all[place] ?? '')?.map((hit) => hit.id) ?? []))
}

/** What goes by the words outside of the brackets under one of its names and by those inside under another. */
function namedByBoth(finder: NameFinder, outer: string, unread: readonly string[]): string[] {
  const inside = idsHolding(finder, wordBag(unread.join(' ')).split(' '))
  return [...idsHolding(finder, wordBag(normalName(outer)).split(' '))].filter((id) => inside.has(id))
}

/** What stands in brackets was not understood: it may make the thing another one ("lake", "pink", "Siam"). */
function withUnread(world: World, name: CleanName, outer: Reading): Reading {
  const { words } = world.knowledge
  const unread = name.inner.flatMap((part) => normalName(part).split(' ')).filter((word) => !words.supply.has(word))
  if (outer.kind !== 'found' || name.bracketInside || unread.length === 0) return outer
  const finder = finderOf(world.knowledge)
  const near = finder.near
    .search(normalName(name.text))
    .filter((one) => one.score >= LIKE_ANOTHER)
    .flatMap((one) => (finder.byName.get(one.name) ?? []).map((hit) => hit.id))
  const others = [...namedByBoth(finder, name.outer, unread), ...near].filter((id) => id !== outer.id)
  const why = 'what stands in brackets was not understood'
  if (others.length === 0)
    return { ...outer, note: [outer.note, why].flatMap((one) => (one ? [world.say.text(one)] : [])).join('; ') }
  return { kind: 'ask', note: why, choices: [outer.id, ...others].map((id) => ({ id, score: 0.8, why })) }
}

/** The inside is a question: the one of its choices that the outside allows, or goes by the outside's words, is meant. */
function agreedByQuestion(
  finder: NameFinder,
  name: CleanName,
  outer: Reading | null,
  inner: readonly Reading[],
): Reading | null {
  const asked = new Set(inner.flatMap(idsOf))
  const common = idsOf(outer).filter((id) => asked.has(id))
  const [one] = common
  if (one !== undefined) return common.length === 1 ? { kind: 'found', id: one } : outer
  const named = [...idsHolding(finder, wordBag(normalName(name.outer)).split(' '))].filter((id) => asked.has(id))
  const [other] = named
  return other !== undefined && named.length === 1
    ? { kind: 'found', id: other, note: 'the name in brackets decides' }
    : outer
}

/** Outside and inside of the brackets each say something: what both allow is meant. */
function agreed(finder: NameFinder, name: CleanName, outer: Reading | null, inner: readonly Reading[]): Reading | null {
  const inside = [...new Set(inner.flatMap((part) => (part.kind === 'found' ? [part.id] : [])))]
  const [only] = inside
  if (inside.length > 1) return outer
  if (outer?.kind === 'not-here') return outer
  if (only === undefined) return agreedByQuestion(finder, name, outer, inner)
  if (outer?.kind !== 'found') return { kind: 'found', id: only, note: 'the name in brackets decides' }
  if (outer.id === only) return outer
  const why = 'outside and inside of the brackets say different things'
  return { kind: 'ask', note: why, choices: [outer.id, only].map((id) => ({ id, score: 0.8, why })) }
}

/** A text with brackets: the whole, what stands outside, what stands inside. The plainer word is decided by the other. */
export function readBrackets(world: World, name: CleanName): Reading | null {
  if (name.inner.length === 0) return readExactly(world, name.outer)
  const whole = readExactly(world, name.text)
  if (whole?.kind === 'found') return whole
  const outer = readExactly(world, name.outer)
  if (name.bracketInside && outer?.kind === 'found') return outer
  const inner = name.inner.map((part) => readExactly(world, part)).filter((part) => part !== null)
  if (inner.length === 0) return outer ? withUnread(world, name, outer) : whole
  return agreed(finderOf(world.knowledge), name, outer ?? whole, inner)
}

const MOST_READINGS = 6

/** Joins the ids of parts; where one part is a question, so is the blend. */
function join(world: World, parts: readonly Reading[]): Reading | null {
  let joined: string[][] = [[]]
  for (const part of parts) {
    if (part.kind === 'not-here') return null
    const ids = part.kind === 'found' ? [part.id] : part.choices.map((choice) => choice.id)
    joined = joined
      .flatMap((before) => ids.map((id) => (before.includes(id) ? before : [...before, id])))
      .slice(0, MOST_READINGS)
  }
  const known = joined.flatMap((ids) => world.find(ids.join('-and-')) ?? [])
  const [first] = known
  if (!first) return null
  if (parts.every((part) => part.kind === 'found')) {
    const recorded = first.tier !== 'inventory' || !first.id.includes('-and-')
    return { kind: 'found', id: first.id, ...(!recorded && { note: 'the shares of the parts are not known' }) }
  }
  const why = 'a part of this blend has several readings'
  return { kind: 'ask', note: why, choices: known.map((one) => ({ id: one.id, score: 0.7, why })) }
}

/** A blend typed part by part, when every part is a known name. */
export function readBlend(world: World, text: string, readPart: (part: string) => Reading | null): Reading | null {
  for (const parts of partsOf(text)) {
    const read = parts.map(readPart)
    if (read.some((part) => part === null)) continue
    const blend = join(
      world,
      read.filter((part) => part !== null),
    )
    if (blend) return blend
  }
  return null
}
