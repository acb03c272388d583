/** Letter of a choice, from its place; a question has far fewer choices than there are letters. */
export const letterOf = (at: number): string => String.fromCharCode(65 + at)

/** Place of the choice a student took; null: left open. */
export type Taken = number | null

export type LettersFault =
  { code: 'count'; got: number; expected: number } | { code: 'letter'; question: number; got: string; last: string }

const OPEN = /[-–_?]/
const GAPS = /[\s,;|]+/g

/**
 * Letters of a whole sheet, one a question, "-" where it was left open; spaces, commas and case do not count.
 *
 * @param typed    as it was typed
 * @param choices  how many choices each question has
 */
export function readLetters(
  typed: string,
  choices: readonly number[],
): { taken: Taken[] } | { fault: LettersFault } | null {
  const letters = [...typed.replace(GAPS, '').toUpperCase()]
  if (letters.length === 0) return null
  if (letters.length !== choices.length) {
    return { fault: { code: 'count', got: letters.length, expected: choices.length } }
  }
  const taken = letters.map((letter) => (OPEN.test(letter) ? null : letter.charCodeAt(0) - 65))
  const wrong = taken.findIndex((place, at) => place !== null && !(place >= 0 && place < (choices[at] ?? 0)))
  if (wrong < 0) return { taken }
  const last = letterOf((choices[wrong] ?? 1) - 1)
  return { fault: { code: 'letter', question: wrong + 1, got: letters[wrong] ?? '', last } }
}

export type LineFault = LettersFault | { code: 'no-answers' } | { code: 'no-name' } | { code: 'twice'; name: string }

export interface PastedLine {
  line: number
  /** as it was pasted */
  words: string
}
export interface Pasted {
  students: { name: string; typed: string }[]
  faults: (PastedLine & { fault: LineFault })[]
}

const BETWEEN = /[\t;,:]/
const bare = (cell: string): string =>
  cell
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim()

/** Name and answers of one line: by tab, semicolon, comma or colon, else the last word is the answers. */
function cut(words: string): { name: string; typed: string } {
  const quoted = /^\s*"([^"]*)"\s*[\t;,:](.*)$/.exec(words)
  const [first = '', ...rest] = quoted ? [quoted[1] ?? '', ...(quoted[2] ?? '').split(BETWEEN)] : words.split(BETWEEN)
  if (rest.length === 0) {
    const [, name = words, typed = ''] = /^(.*\S)\s+(\S+)\s*$/.exec(words) ?? []
    return { name: bare(name), typed }
  }
  const cells = rest.map(bare)
  // An empty cell between others is a question left open; an empty line of cells is no answer.
  const typed =
    cells.length === 1 ? cells[0] : cells.some((cell) => cell !== '') ? cells.map((c) => c || '-').join('') : ''
  return { name: bare(first), typed: typed ?? '' }
}

function faultOf(one: { name: string; typed: string }, names: ReadonlySet<string>, choices: readonly number[]) {
  if (one.name === '') return { code: 'no-name' } as const
  if (names.has(one.name)) return { code: 'twice', name: one.name } as const
  const read = readLetters(one.typed, choices)
  if (read === null) return { code: 'no-answers' } as const
  return 'fault' in read ? read.fault : null
}

/** Students out of pasted lines; a line at fault is named and left to be put right, the others are taken. */
export function readPasted(text: string, choices: readonly number[], known: readonly string[]): Pasted {
  const names = new Set(known)
  const pasted: Pasted = { students: [], faults: [] }
  for (const [at, words] of text.split(/\r?\n/).entries()) {
    if (words.trim() === '') continue
    const one = cut(words)
    const fault = faultOf(one, names, choices)
    if (fault) pasted.faults.push({ line: at + 1, words, fault })
    else {
      names.add(one.name)
      pasted.students.push(one)
    }
  }
  return pasted
}
