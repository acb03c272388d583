import { editDistance, likeness } from './edit-distance.ts'
import { bonesOf, soundOf, squashed, wordsOf } from './normal-name.ts'

/** Whether two words differ in vowels, doubled letters or spelling by sound only. */
export function soundsAlike(a: string, b: string): boolean {
  if (/\d/.test(a) || /\d/.test(b)) return a === b
  return bonesOf(a) === bonesOf(b) || bonesOf(soundOf(a)) === bonesOf(soundOf(b))
}

/** Whether a word can be a slip of the pen for another. Short words change their meaning with one consonant. */
function isSlip(typed: string, meant: string, alone: boolean): boolean {
  if (/\d/.test(typed) || /\d/.test(meant)) return false
  const length = Math.max(typed.length, meant.length)
  if (soundsAlike(typed, meant)) return likeness(typed, meant) > (alone ? 0.7 : 0.55) && length >= (alone ? 5 : 3)
  const allowed = length >= 12 ? 2 : length >= (alone ? 8 : 4) ? 1 : 0
  return editDistance(typed, meant, allowed) <= allowed
}

/** Words of both texts that have no equal in the other. */
function unmatched(typed: readonly string[], meant: readonly string[]): [string[], string[]] {
  const rest = [...meant]
  const open = typed.filter((word) => {
    const at = rest.indexOf(word)
    if (at >= 0) rest.splice(at, 1)
    return at < 0
  })
  return [open, rest]
}

/** Letters of the shortest text that may be written apart or together by mistake. */
const SHORTEST = 7

/** A word in so many names is no accident in a text. */
const COMMON = 15

/** A known word this many times rarer than the one it sounds like may be that one of another language. */
const RARER = 8

/** Colours that differ by one digit or letter are different substances. */
const COLOUR_NUMBER = /\b(?:red|yellow|blue|green|orange|violet|black|brown|ci)\b.*\d/

const numbersOf = (text: string): string => (text.match(/\d+/g) ?? []).sort().join(' ')

/**
 * Whether a typed text is a misspelling of a name. A word that is known is not a misspelling of another word, numbers
 * must be the same, and no word may be missing or too many.
 * @param timesKnown in how many names a word occurs
 */
export function isMisspelling(typed: string, name: string, timesKnown: (word: string) => number): boolean {
  if (numbersOf(typed) !== numbersOf(name) || COLOUR_NUMBER.test(typed)) return false
  const [open, rest] = unmatched(wordsOf(typed), wordsOf(name))
  if (open.length === 0 || rest.length === 0) return false
  if (open.length === rest.length) {
    const alone = wordsOf(name).length === 1
    return open.every((word) => {
      const times = timesKnown(word)
      const rare = (other: string) => times * RARER < timesKnown(other) && soundsAlike(word, other)
      const at = rest.findIndex((other) => isSlip(word, other, alone) && (times === 0 || rare(other)))
      if (at >= 0) rest.splice(at, 1)
      return at >= 0
    })
  }
  // Written apart or together: the letters must agree as a whole.
  const apart = open.join('')
  const together = rest.join('')
  if (squashed(typed).length < SHORTEST || apart.length < 5) return false
  if (open.some((word) => timesKnown(word) >= COMMON && !together.includes(word) && word.length > 2)) return false
  const close = likeness(apart, together)
  const bySound = likeness(soundOf(apart), soundOf(together))
  return soundsAlike(apart, together) ? close >= 0.5 : Math.max(close, bySound) >= 0.8
}
