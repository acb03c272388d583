/**
 * Edits between two words: insertion, deletion, substitution and swap of neighbours count one each.
 * @param limit gives up with limit + 1 as soon as more edits are certain
 */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    let least = i
    for (let j = 1; j <= b.length; j++) {
      const same = a.charCodeAt(i - 1) === b.charCodeAt(j - 1)
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1))
      const swapped =
        i > 1 && j > 1 && a.charCodeAt(i - 1) === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === b.charCodeAt(j - 1)
      if (swapped && !same) cost = Math.min(cost, (before[j - 2] ?? 0) + 1)
      row.push(cost)
      if (cost < least) least = cost
    }
    if (least > limit) return limit + 1
    before = last
    last = row
  }
  return last[b.length] ?? limit + 1
}

/** 1 for equal texts, 0 when nothing is shared: edits against the longer length. */
export function likeness(a: string, b: string): number {
  const longer = Math.max(a.length, b.length)
  if (longer === 0) return 1
  const limit = Math.ceil(longer * 0.5)
  return Math.max(0, 1 - editDistance(a, b, limit) / longer)
}
