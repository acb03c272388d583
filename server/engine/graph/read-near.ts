import type { Say } from '#engine/words/say.ts'
import type { CleanName } from '#engine/knowledge/clean-name.ts'
import { finderOf } from '#engine/knowledge/find-names.ts'
import type { NameFinder } from '#engine/knowledge/find-names.ts'
import { isMisspelling } from '#engine/knowledge/misspelt.ts'
import { isHazardous, natureOf } from '#engine/knowledge/nature.ts'
import { normalName, squashed, wordBag } from '#engine/knowledge/normal-name.ts'
import { otherGenus, rewrites } from '#engine/knowledge/rewrite-name.ts'
import { translated } from '#engine/knowledge/translate-name.ts'
import { readWordBySound } from './read-exactly.ts'
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
/** What a form of the text that is not the text itself is held back by. */
const FORM_LOSS = 0.08
/** Likeness from which a harmful rival counts against completing a word. */
const AS_NEAR = 0.8
const MOST_OFFERS = 6
/** Forms of a text that are compared; the first is the text itself. */
const MOST_FORMS = 3

interface Near {
  name: string
  written: number
  score: number
  reading: Reading
  ids: string[]
  inci: string
}

const idsIn = (reading: Reading): string[] =>
  reading.kind === 'found' ? [reading.id] : reading.kind === 'ask' ? reading.choices.map((choice) => choice.id) : []

function nearOf(world: World, finder: NameFinder, text: string): Near[] {
  const out = finder.near.search(text).flatMap(({ name, written, score, alike }) => {
    if (score < OFFER) return []
    const hits = finder.byName.get(name)
    if (!hits) return []
    const reading = readingOf(name, hits, world.knowledge)
    const ids = idsIn(reading)
    const bonus = alike ? SOUND_BONUS : 0
    const inci = nameOf(world, ids[0] ?? '')?.inci ?? name
    return [{ name, written, score: score + bonus, reading, ids, inci }]
  })
  const usual = (near: Near) => usualOf(world.knowledge, near.ids[0] ?? '')
  return out.sort((a, b) => b.score - a.score || usual(b) - usual(a) || (a.name < b.name ? -1 : 1))
}

/** Whether a rival is too near to choose the first without asking. */
function blocks(world: World, first: Near, rival: Near): boolean {
  if (rival.ids.some((id) => first.ids.includes(id)) || wordBag(rival.name) === wordBag(first.name)) return false
  const record = (near: Near) => world.knowledge.ingredients.get(near.ids[0] ?? '')
  const other = natureOf(first.inci) !== natureOf(rival.inci)
  const harm = other && (isHazardous(first.inci, record(first)) || isHazardous(rival.inci, record(rival)))
  const lead = harm ? LEAD.harm : other ? LEAD.other : LEAD.same
  const ahead = first.score - rival.score
  const aheadAsWritten = first.written - rival.written
  if (aheadAsWritten < -LEAD.same && ahead < SOUND_BONUS * 2.5) return true
  // Where one of the two can hurt, a name that only sounds nearer is no excuse.
  return aheadAsWritten < lead && (harm || ahead < lead)
}

function offer(world: World, near: readonly Near[]): Reading {
  const best = new Map<string, { id: string; score: number; why: string }>()
  for (const { name, score, ids } of near) {
    for (const id of ids)
      if (!best.has(id)) best.set(id, { id, score: Math.min(1, score), why: world.say`near "${name}"` })
  }
  const choices = [...best.values()]
    .sort((a, b) => b.score - a.score || usualOf(world.knowledge, b.id) - usualOf(world.knowledge, a.id))
    .slice(0, MOST_OFFERS)
  return { kind: 'ask', note: 'no such name is known; these are near it', choices }
}

function readAs(reading: Reading, name: string, say: Say): Reading {
  if (reading.kind !== 'found') return reading
  const note = reading.note ? say`read as ${name}; ${say.text(reading.note)}` : say`read as ${name}`
  return { ...reading, note }
}

/** The text, without words for supply, and in English. */
function formsOf(world: World, key: string): string[] {
  const { words } = world.knowledge
  const english = translated(key, words)
  return [...new Set([...rewrites(key, words).slice(0, MOST_FORMS - 1), ...(english === null ? [] : [english])])]
}

/** A name of which a word is missing, also under its second botanical name: two answers are a question. */
function readPartials(world: World, key: string): Reading | null {
  const other = otherGenus(key, world.knowledge.words.genus)
  const first = readPartial(world, key)
  const second = other === key ? null : readPartial(world, other)
  if (first?.kind !== 'found') return second?.kind === 'found' ? second : (first ?? second)
  if (second?.kind !== 'found' || second.id === first.id) return first
  const why = 'the plant has two names, and each fits another ingredient'
  return { kind: 'ask', note: why, choices: [second.id, first.id].map((id) => ({ id, score: 0.7, why })) }
}

/** Whether completing a text could hide that something harmful was meant, or the other way round. */
function isRisky(world: World, finder: NameFinder, key: string, id: string): boolean {
  const list = nearOf(world, finder, key)
  const first = list.find((near) => near.ids.includes(id))
  const isHarsh = (near: Near) => isHazardous(near.inci, world.knowledge.ingredients.get(near.ids[0] ?? ''))
  if (first === undefined) return false
  return list.some((one) => one.written >= AS_NEAR && (isHarsh(one) || isHarsh(first)) && blocks(world, first, one))
}

/** Reads a misspelt or shortened name: as one thing when it is clear and nothing dangerous is near, else as a question. */
export function readNear(world: World, typed: CleanName): Reading | null {
  const key = normalName(typed.outer || typed.text)
  if (squashed(key).length < 3) return null
  const finder = finderOf(world.knowledge)
  const partial = readPartials(world, key)
  if (partial?.kind === 'found' && !isRisky(world, finder, key, partial.id)) return partial
  const asked = readWordBySound(world, key)
  if (asked) return asked
  const near = formsOf(world, key)
    .map((form, index) => ({ form, list: nearOf(world, finder, form), loss: index === 0 ? 0 : FORM_LOSS }))
    .sort((a, b) => (b.list[0]?.score ?? 0) - b.loss - (a.list[0]?.score ?? 0) + a.loss)[0]
  const first = near?.list[0]
  if (!near || !first) return partial?.kind === 'found' ? null : partial
  const alone = !near.list.some((rival) => rival !== first && blocks(world, first, rival))
  const timesKnown = (word: string) => finder.byWord.get(word)?.length ?? 0
  if (alone && isMisspelling(near.form, first.name, timesKnown)) return readAs(first.reading, first.name, world.say)
  return partial?.kind === 'ask' ? partial : offer(world, near.list)
}
