import type { Say } from '#engine/words/say.ts'
import { cleanName } from '#engine/knowledge/clean-name.ts'
import { readExactly } from './read-exactly.ts'
import { readNear } from './read-near.ts'
import { readBlend, readBrackets } from './read-parts.ts'
import { replyOf } from './reading.ts'
import type { Reading, ResolveResult } from './reading.ts'
import type { World } from './world.ts'

const readPart = (world: World, text: string): Reading | null =>
  readExactly(world, text) ?? readBrackets(world, cleanName(text))

function withRemarks(reading: Reading, remarks: readonly string[], say: Say): Reading {
  if (reading.kind !== 'found' || remarks.length === 0) return reading
  const typed = say`typed with ${remarks.join(', ')}: the dose depends on strength and form`
  return { ...reading, note: reading.note ? `${say.text(reading.note)}; ${typed}` : typed }
}

function read(world: World, typed: string): Reading | null {
  const whole = readExactly(world, typed)
  if (whole) return withRemarks(whole, cleanName(typed).remarks, world.say)
  const name = cleanName(typed)
  const exact = readBrackets(world, name) ?? readBlend(world, name.text, (part) => readPart(world, part))
  const reading = exact ?? readNear(world, name)
  return reading && withRemarks(reading, name.remarks, world.say)
}

/**
 * What a person meant by each typed name. A name is found when one thing is meant beyond doubt; two readings, or a
 * near one of another nature, become a question; what is not in the inventory stays unknown.
 */
export const resolveNames = (world: World, names: readonly string[]): ResolveResult[] =>
  names.map((typed) => replyOf(world, typed, read(world, typed)))
