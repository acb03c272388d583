import type { CleanName } from '#engine/knowledge/clean-name.ts'
import { finderOf, soundBag } from '#engine/knowledge/find-names.ts'
import type { NameFinder } from '#engine/knowledge/find-names.ts'
import { isMisspelling, soundsAlike } from '#engine/knowledge/misspelt.ts'
import { isHazardous, natureOf } from '#engine/knowledge/nature.ts'
import { normalName, squashed, wordBag, wordsOf } from '#engine/knowledge/normal-name.ts'
import { rewrites } from '#engine/knowledge/rewrite-name.ts'
import { readPartial } from './read-partial.ts'
import { nameOf, readingOf, usualOf } from './reading.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

/** Likeness from which a name is offered. */
const OFFER = 0.6
/** What a name gains that differs in vowels only. */
const SOUND_BONUS = 0.08
/** Lead over a rival of the same nature, over one of another nature, and where one of the two can hurt. */
const LEAD = { same: 0.02, other: 0.06, harm: 0.18 }
const MOST_OFFERS = 6
/** Sound-equal texts shorter than this are words of their own too often. */
const SHORT = 4

interface Near {
  name: string
  score: number
  reading: Reading
  ids: string[]
  inci: string
}

const idsIn = (reading: Reading): string[] =>
  reading.kind === 'found' ? [reading.id] : reading.kind === 'ask' ? reading.choices.map((choice) => choice.id) : []

function nearOf(world: World, finder: NameFinder, text: string): Near[] {
  const flat = squashed(text)
  const out = finder.near.search(text).flatMap(({ name, score }) => {
    if (score < OFFER) return []
    const hits = finder.byName.get(name)
    if (!hits) return []
    const reading = readingOf(name, hits, world.knowledge)
    const ids = idsIn(reading)
    const bonus = soundsAlike(flat, squashed(name)) ? SOUND_BONUS : 0
    const inci = nameOf(world, ids[0] ?? '')?.inci ?? name
    return [{ name, score: Math.min(1, score + bonus), reading, ids, inci }]
  })
  return out.sort((a, b) => b.score - a.score || (a.name < b.name ? -1 : 1))
}

/** Whether a rival is too near to choose the first without asking. */
function blocks(world: World, first: Near, rival: Near): boolean {
  if (rival.ids.some((id) => first.ids.includes(id))) return false
  const record = (near: Near) => world.knowledge.ingredients.get(near.ids[0] ?? '')
  const other = natureOf(first.inci) !== natureOf(rival.inci)
  const harm = other && (isHazardous(first.inci, record(first)) || isHazardous(rival.inci, record(rival)))
  return first.score - rival.score < (harm ? LEAD.harm : other ? LEAD.other : LEAD.same)
}

function offer(world: World, near: readonly Near[]): Reading {
  const best = new Map<string, { id: string; score: number; why: string }>()
  for (const { name, score, ids } of near) {
    for (const id of ids) if (!best.has(id)) best.set(id, { id, score, why: `near "${name}"` })
  }
  const choices = [...best.values()]
    .sort((a, b) => b.score - a.score || usualOf(world.knowledge, b.id) - usualOf(world.knowledge, a.id))
    .slice(0, MOST_OFFERS)
  return { kind: 'ask', note: 'no such name is known; these are near it', choices }
}

const readAs = (reading: Reading, name: string): Reading =>
  reading.kind === 'found' ? { ...reading, note: `read as ${name}${reading.note ? `; ${reading.note}` : ''}` } : reading

/** A text that sounds like a known name, words in any order. */
function readBySound(world: World, finder: NameFinder, form: string, isKnown: (word: string) => boolean) {
  const bag = wordBag(form)
  const hits = squashed(bag).length > SHORT ? finder.bySound.get(soundBag(bag)) : undefined
  if (!hits || wordsOf(form).every(isKnown)) return null
  const reading = readingOf(form, hits, world.knowledge)
  const [id] = idsIn(reading)
  return readAs(reading, nameOf(world, id ?? '')?.inci.toLowerCase() ?? form)
}

/** Reads a misspelt or shortened name: as one thing when it is clear and nothing dangerous is near, else as a question. */
export function readNear(world: World, typed: CleanName): Reading | null {
  const key = normalName(typed.outer || typed.text)
  if (squashed(key).length < 3) return null
  const finder = finderOf(world.knowledge)
  const isKnown = (word: string) => finder.byWord.has(word)
  const partial = readPartial(world, key)
  if (partial?.kind === 'found') return partial
  const forms = rewrites(key, world.knowledge.words).slice(0, 3)
  for (const form of forms) {
    const heard = readBySound(world, finder, form, isKnown)
    if (heard) return heard
  }
  const near = forms
    .map((form) => ({ form, list: nearOf(world, finder, form) }))
    .sort((a, b) => (b.list[0]?.score ?? 0) - (a.list[0]?.score ?? 0))[0]
  const first = near?.list[0]
  if (!near || !first) return partial
  const alone = !near.list.some((rival) => rival !== first && blocks(world, first, rival))
  if (alone && isMisspelling(near.form, first.name, isKnown)) return readAs(first.reading, first.name)
  return partial ?? offer(world, near.list)
}
