import { finderOf } from '#engine/knowledge/find-names.ts'
import { normalName } from '#engine/knowledge/normal-name.ts'
import { readingOf } from './reading.ts'
import type { Reading } from './reading.ts'
import type { World } from './world.ts'

const CAS = /^(?:cas(?:\s*(?:no|nr|number|rn))?\.?\s*[:#]?\s*)?(\d{2,7})\s*-\s*(\d{2})\s*-\s*(\d)$/i

/** The last digit of a CAS number is the sum of the others, each times its place from the right, modulo ten. */
export function casIsWhole(body: string, check: string): boolean {
  const sum = [...body].reverse().reduce((total, digit, index) => total + Number(digit) * (index + 1), 0)
  return sum % 10 === Number(check)
}

function readCas(world: World, text: string): Reading | null {
  const match = CAS.exec(text.replace(/[‐‑‒–—−]/g, '-').trim())
  if (!match) return null
  const [, first = '', second = '', check = ''] = match
  if (!casIsWhole(first + second, check)) {
    return { kind: 'not-here', note: 'the check digit of this CAS number is wrong' }
  }
  const number = `${first}-${second}-${check}`
  const key = normalName(number)
  const meant = world.knowledge.words.means.get(key.replace(/ /g, ''))
  if (meant) return { kind: 'found', id: meant.take, ...(meant.note && { note: meant.note }) }
  const hits = finderOf(world.knowledge).byName.get(key)
  if (hits) return readingOf(key, hits, world.knowledge)
  return { kind: 'not-here', note: 'no ingredient of the inventory carries this CAS number' }
}

/** "E 500 (ii)", "e500ii", "INS 500": the number of a food additive; a part of it when the part is not known. */
function readAdditive(world: World, key: string): Reading | null {
  const match = /^(?:e|ins) ?(\d{3,4}) ?([a-z]?) ?(i{1,3}|iv|v)?$/.exec(key)
  if (!match) return null
  const [, number = '', letter = '', part = ''] = match
  const { words } = world.knowledge
  const finder = finderOf(world.knowledge)
  for (const name of [`e${number}${letter}${part}`, `e${number}${letter}`]) {
    const asked = words.ask.get(name)
    if (asked)
      return { kind: 'ask', choices: asked.choices.map((id) => ({ id, score: 0.8, why: asked.why })), note: asked.why }
    const meant = words.means.get(name)
    if (meant) return { kind: 'found', id: meant.take, ...(meant.note && { note: meant.note }) }
    const hits = finder.bySquash.get(name)
    if (hits) return readingOf(name, hits, world.knowledge)
  }
  return { kind: 'not-here', note: 'no ingredient of the inventory carries this additive number' }
}

/** "CI 77891" with any spacing; a colour index number that is not known has no near one. */
function readColour(world: World, key: string): Reading | null {
  const match = /^(?:c i|ci|color index)(?: (?:no|nr|number))? ?(\d{5})$/.exec(key)
  if (!match) return null
  const hits = finderOf(world.knowledge).bySquash.get(`ci${match[1]}`)
  return hits
    ? readingOf(key, hits, world.knowledge)
    : { kind: 'not-here', note: 'no ingredient of the inventory carries this colour index number' }
}

/** Names that are numbers: CAS, food additive, colour index. Null when the text is none of these. */
export const readNumber = (world: World, text: string, key: string): Reading | null =>
  readCas(world, text) ?? readAdditive(world, key) ?? readColour(world, key)
