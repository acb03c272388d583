const LONGEST = 256
// Three rows that are used over and over: a search compares a text with dozens of names.
let before = new Uint16Array(LONGEST + 1)
let last = new Uint16Array(LONGEST + 1)
let row = new Uint16Array(LONGEST + 1)

/**
 * Edits between two words: insertion, deletion, substitution and swap of neighbours count one each.
 * @param limit gives up with limit + 1 as soon as more edits are certain
 */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit || b.length > LONGEST) return limit + 1
  for (let j = 0; j <= b.length; j++) last[j] = j
  for (let i = 1; i <= a.length; i++) {
    row[0] = i
    let least = i
    const letter = a.charCodeAt(i - 1)
    for (let j = 1; j <= b.length; j++) {
      const other = b.charCodeAt(j - 1)
      const diagonal = last[j - 1] ?? 0
      let cost = letter === other ? diagonal : 1 + Math.min(diagonal, last[j] ?? 0, row[j - 1] ?? 0)
      const swapped = i > 1 && j > 1 && letter === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === other
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1)
      row[j] = cost
      if (cost < least) least = cost
    }
    if (least > limit) return limit + 1
    const free = before
    before = last
    last = row
    row = free
  }
  return last[b.length] ?? limit + 1
}

/** 1 for equal texts, 0 when less than half is shared: edits against the longer length. */
export function likeness(a: string, b: string): number {
  const longer = Math.max(a.length, b.length)
  if (longer === 0 || a === b) return 1
  const limit = Math.floor(longer * 0.45)
  const edits = editDistance(a, b, limit)
  return edits > limit ? 0 : 1 - edits / longer
}
