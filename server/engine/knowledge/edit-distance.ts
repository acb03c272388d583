/** Letters a bit pattern of one number holds. */
const BITS = 32
const TOP = 1 << (BITS - 1)
const LONGEST = 256
const BLOCKS = LONGEST / BITS
const LETTERS = 128

// Patterns that are used over and over: a search compares a text with dozens of names.
/** letter and block → places of that block at which the shorter word has the letter */
const places = new Int32Array(LETTERS * BLOCKS)
/** per block: places that cost one more than the place before, one less, no more than the one above and before */
const more = new Int32Array(BLOCKS)
const less = new Int32Array(BLOCKS)
const same = new Int32Array(BLOCKS)
/** per block: places that have the letter before */
const placesBefore = new Int32Array(BLOCKS)

const codeAt = (text: string, at: number): number => Math.min(text.charCodeAt(at), LETTERS - 1)

function notePlaces(word: string, blocks: number): void {
  for (let at = 0; at < word.length; at++) {
    const slot = codeAt(word, at) * BLOCKS + (at >> 5)
    places[slot] = (places[slot] ?? 0) | (1 << (at & 31))
  }
  more.fill(-1, 0, blocks)
  less.fill(0, 0, blocks)
  same.fill(0, 0, blocks)
  placesBefore.fill(0, 0, blocks)
}

function forgetPlaces(word: string): void {
  for (let at = 0; at < word.length; at++) places[codeAt(word, at) * BLOCKS + (at >> 5)] = 0
}

/** One letter of the longer word against all places of the shorter. @returns what it adds to the cost at the end */
function step(code: number, blocks: number, end: number): number {
  let carryMore = 1
  let carryLess = 0
  let carrySwap = 0
  let change = 0
  for (let block = 0; block < blocks; block++) {
    const here = places[code * BLOCKS + block] ?? 0
    const up = more[block] ?? 0
    const down = less[block] ?? 0
    const differing = ~(same[block] ?? 0) & here
    const swapped = ((differing << 1) | carrySwap) & (placesBefore[block] ?? 0)
    carrySwap = differing >>> (BITS - 1)
    const taken = here | carryLess
    const equal = ((((taken & up) + up) | 0) ^ up) | taken | down | swapped
    let dearer = down | ~(equal | up)
    let cheaper = equal & up
    if (block === blocks - 1) change = dearer & end ? 1 : cheaper & end ? -1 : 0
    const nextMore = dearer & TOP ? 1 : 0
    const nextLess = cheaper & TOP ? 1 : 0
    dearer = (dearer << 1) | carryMore
    cheaper = (cheaper << 1) | carryLess
    carryMore = nextMore
    carryLess = nextLess
    more[block] = cheaper | ~(equal | dearer)
    less[block] = dearer & equal
    same[block] = equal
    placesBefore[block] = here
  }
  return change
}

/**
 * Edits between two normal names: insertion, deletion, substitution and swap of neighbours count one each.
 * Works on all places of the shorter word at once, as bits, one letter of the longer word after the other.
 * @param limit gives up with limit + 1 as soon as more edits are certain
 *
 * Names of more than 256 letters are compared with nothing. Letters beyond ASCII, of which a normal name has none,
 * count as one and the same.
 * Source: H. Hyyrö, A bit-vector algorithm for computing Levenshtein and Damerau edit distances, Nordic Journal of
 * Computing 10 (2003) 29 to 39; written from memory, tested against the table of the definition.
 */
export function editDistance(a: string, b: string, limit: number): number {
  const [shorter, longer] = a.length < b.length ? [a, b] : [b, a]
  if (longer.length - shorter.length > limit || longer.length > LONGEST) return limit + 1
  if (shorter.length === 0) return longer.length
  const blocks = Math.ceil(shorter.length / BITS)
  const end = 1 << ((shorter.length - 1) & 31)
  notePlaces(shorter, blocks)
  let cost = shorter.length
  for (let at = 0; at < longer.length && cost - (longer.length - at) <= limit; at++) {
    cost += step(codeAt(longer, at), blocks, end)
  }
  forgetPlaces(shorter)
  return Math.min(cost, limit + 1)
}

/** 1 for equal texts, 0 when less than half is shared: edits against the longer length. */
export function likeness(a: string, b: string): number {
  const longer = Math.max(a.length, b.length)
  if (longer === 0 || a === b) return 1
  const limit = Math.floor(longer * 0.45)
  const edits = editDistance(a, b, limit)
  return edits > limit ? 0 : 1 - edits / longer
}
