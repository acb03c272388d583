import { partsOf } from '#engine/knowledge/clean-name.ts'
import type { CleanName } from '#engine/knowledge/clean-name.ts'
import { finderOf } from '#engine/knowledge/find-names.ts'
import { normalName } from '#engine/knowledge/normal-name.ts'
import { readExactly } from './read-exactly.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

const idsOf = (reading: Reading | null): string[] =>
  reading?.kind === 'found' ? [reading.id] : reading?.kind === 'ask' ? reading.choices.map((choice) => choice.id) : []

/** Likeness of the whole text to another name from which an unread bracket may name something else. */
const LIKE_ANOTHER = 0.85

/** What stands in brackets was not understood: it may make the thing another one ("lake", "pink", "Siam"). */
function withUnread(world: World, name: CleanName, outer: Reading): Reading {
  const { words } = world.knowledge
  const unread = name.inner.flatMap((part) => normalName(part).split(' ')).filter((word) => !words.supply.has(word))
  if (outer.kind !== 'found' || name.bracketInside || unread.length === 0) return outer
  const finder = finderOf(world.knowledge)
  const others = finder.near
    .search(normalName(name.text))
    .filter((near) => near.score >= LIKE_ANOTHER)
    .flatMap((near) => (finder.byName.get(near.name) ?? []).map((hit) => hit.id))
    .filter((id) => id !== outer.id)
  const why = 'what stands in brackets was not understood'
  if (others.length === 0) return { ...outer, note: outer.note ? `${outer.note}; ${why}` : why }
  return { kind: 'ask', note: why, choices: [outer.id, ...others].map((id) => ({ id, score: 0.8, why })) }
}

/** Outside and inside of the brackets each say something: what both allow is meant. */
function agreed(outer: Reading | null, inner: readonly Reading[]): Reading | null {
  const inside = [...new Set(inner.flatMap((part) => (part.kind === 'found' ? [part.id] : [])))]
  const [only] = inside
  if (inside.length > 1) return outer
  if (only === undefined) {
    const common = idsOf(outer).filter((id) => inner.some((part) => idsOf(part).includes(id)))
    const [one] = common
    return one !== undefined && common.length === 1 ? { kind: 'found', id: one } : outer
  }
  if (outer?.kind === 'not-here') return outer
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
  return agreed(outer ?? whole, inner)
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
