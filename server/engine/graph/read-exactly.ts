import { finderOf } from '#engine/knowledge/find-names.ts'
import type { NameFinder } from '#engine/knowledge/find-names.ts'
import { normalName, soundOf, squashed, wordBag, wordsOf } from '#engine/knowledge/normal-name.ts'
import { rewrites } from '#engine/knowledge/rewrite-name.ts'
import { translated } from '#engine/knowledge/translate-name.ts'
import { readNumber } from './read-number.ts'
import { readingOf, usualOf } from './reading.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

/** What graph-data/names.yaml says of a text. */
export function readWord(world: World, key: string): Reading | null {
  const { ask, means, notHere } = world.knowledge.words
  const flat = squashed(key)
  const word = ask.get(flat)
  if (word) {
    const players = word.role ? world.players(word.role) : []
    const members = word.class ? world.subjects.filter((one) => one.classes.has(word.class ?? '')) : []
    const more = [...players, ...members]
      .map((one) => one.id)
      .sort((a, b) => usualOf(world.knowledge, b) - usualOf(world.knowledge, a) || (a < b ? -1 : 1))
    const choices = [...word.choices, ...more].map((id) => ({ id, score: 0.8, why: word.why }))
    return { kind: 'ask', choices, note: word.why }
  }
  const meant = means.get(flat)
  if (meant) return { kind: 'found', id: meant.take, ...(meant.note && { note: meant.note }) }
  const why = notHere.get(flat)
  return why === undefined ? null : { kind: 'not-here', note: why }
}

/** An everyday word that is only misspelt: "meth an all". Short words sound like too many others. */
export function readWordBySound(world: World, key: string): Reading | null {
  const sound = soundOf(squashed(key))
  if (sound.length < 6) return null
  const word = world.knowledge.words.askBySound.get(sound)
  return word === undefined ? null : readWord(world, word)
}

/** A name as it stands: everyday word, known name, or known name written with other spaces. */
function readAsIs(world: World, finder: NameFinder, key: string): Reading | null {
  const word = readWord(world, key)
  const hits = finder.byName.get(key) ?? finder.bySquash.get(squashed(key))
  const isEntry = hits?.some((hit) => hit.why === 'inci')
  if (word && !(word.kind === 'not-here' && isEntry)) return word
  return hits ? readingOf(key, hits, world.knowledge) : null
}

function readReordered(world: World, finder: NameFinder, key: string): Reading | null {
  const bag = wordBag(key)
  if (bag === '') return null
  const word = readWord(world, wordsOf(key).join(' '))
  if (word) return word
  const hits = finder.byBag.get(bag)
  return hits ? readingOf(bag, hits, world.knowledge) : null
}

/**
 * Reads a name without guessing: by its letters, its words in any order, other ways to write the same thing, other
 * languages. Null when no known name fits.
 */
export function readExactly(world: World, text: string): Reading | null {
  const key = normalName(text)
  if (key === '') return null
  const number = readNumber(world, text, key)
  if (number) return number
  const finder = finderOf(world.knowledge)
  const { words } = world.knowledge
  const forms = rewrites(key, words)
  for (const form of forms) {
    const reading = readAsIs(world, finder, form)
    if (reading) return reading
  }
  for (const form of forms) {
    const reading = readReordered(world, finder, form)
    if (reading) return reading
  }
  const foreign = translated(key, words)
  if (foreign === null) return null
  for (const form of rewrites(foreign, words)) {
    const reading = readAsIs(world, finder, form) ?? readReordered(world, finder, form)
    if (reading) return reading
  }
  return null
}
