import type { CleanName } from '#engine/knowledge/clean-name.ts'
import { finderOf } from '#engine/knowledge/find-names.ts'
import type { NearName } from '#engine/knowledge/near-names.ts'
import { isHazardous, natureOf } from '#engine/knowledge/nature.ts'
import { normalName, soundOf, squashed } from '#engine/knowledge/normal-name.ts'
import { rewrites } from '#engine/knowledge/rewrite-name.ts'
import { readPartial } from './read-partial.ts'
import { nameOf, readingOf, usualOf } from './reading.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

/** Likeness from which a name is read as another, and below which it is not even offered. */
const READ_AS = 0.8
const OFFER = 0.6
/** Lead over a rival of the same nature, over one of another nature, and where one of the two can hurt. */
const LEAD = { same: 0.03, other: 0.09, harm: 0.2 }
const MOST_OFFERS = 6

interface Near extends NearName {
  id: string
  inci: string
}

const numbersOf = (text: string): string => (text.match(/\d+/g) ?? []).sort().join(' ')

/** Consonants in order, by sound: what is left when vowels are misheard or dropped. */
const bones = (text: string): string =>
  squashed(soundOf(squashed(text)))
    .replace(/(?!^)[aeiou]/g, '')
    .replace(/(.)\1+/g, '$1')

function nearOf(world: World, text: string): Near[] {
  const finder = finderOf(world.knowledge)
  const best = new Map<string, Near>()
  for (const { name, score } of finder.near.search(text)) {
    if (score < OFFER) break
    for (const hit of finder.byName.get(name) ?? []) {
      const known = nameOf(world, hit.id)
      if (!known || best.has(known.id)) continue
      best.set(known.id, { name, score, id: known.id, inci: known.inci })
    }
  }
  return [...best.values()]
}

/** Whether a rival is too near to choose the first without asking. */
function blocks(world: World, first: Near, rival: Near): boolean {
  const harm = [first, rival].some((one) => isHazardous(one.inci, world.knowledge.ingredients.get(one.id)))
  const other = natureOf(first.inci) !== natureOf(rival.inci)
  const lead = harm && other ? LEAD.harm : other ? LEAD.other : LEAD.same
  return first.score - rival.score < lead
}

/** A short word changes its meaning with one consonant; only vowels and sound-alikes are forgiven there. */
function isClear(text: string, first: Near): boolean {
  if (numbersOf(text) !== numbersOf(first.name)) return false
  const flat = squashed(text)
  const sameBones = bones(text) === bones(first.name)
  if (sameBones) return first.score >= (flat.length < 6 ? 0.75 : 0.7)
  return flat.length >= 9 && first.score >= READ_AS
}

const offer = (world: World, near: readonly Near[]): Reading => ({
  kind: 'ask',
  note: 'no such name is known; these are near it',
  choices: [...near]
    .sort((a, b) => b.score - a.score || usualOf(world.knowledge, b.id) - usualOf(world.knowledge, a.id))
    .slice(0, MOST_OFFERS)
    .map(({ id, score, name }) => ({ id, score, why: `near "${name}"` })),
})

/** Reads a misspelt or shortened name: as one thing when it is clear and nothing dangerous is near, else as a question. */
export function readNear(world: World, typed: CleanName): Reading | null {
  const key = normalName(typed.outer || typed.text)
  if (squashed(key).length < 3) return null
  const partial = readPartial(world, key)
  if (partial?.kind === 'found') return partial
  const near = rewrites(key, world.knowledge.words)
    .slice(0, 3)
    .map((form) => ({ form, list: nearOf(world, form) }))
    .sort((a, b) => (b.list[0]?.score ?? 0) - (a.list[0]?.score ?? 0))[0]
  const first = near?.list[0]
  if (!near || !first) return partial
  const rivals = near.list.filter((one) => one.id !== first.id && blocks(world, first, one))
  if (rivals.length === 0 && isClear(near.form, first)) {
    const hits = finderOf(world.knowledge).byName.get(first.name) ?? []
    const reading = readingOf(first.name, hits, world.knowledge)
    if (reading.kind === 'found') return { ...reading, note: `read as ${first.name}` }
    return reading
  }
  if (partial && first.score < READ_AS) return partial
  return offer(world, near.list)
}
