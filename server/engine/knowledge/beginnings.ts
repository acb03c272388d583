/** First place in an ascending list that is not below the text. */
function firstAt(sorted: readonly string[], text: string): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((sorted[middle] ?? '') < text) low = middle + 1
    else high = middle
  }
  return low
}

/** Names of an ascending list that begin as typed, in its order, at most as many as said. */
export function beginningWith(sorted: readonly string[], text: string, most: number): string[] {
  const out: string[] = []
  for (let at = firstAt(sorted, text); at < sorted.length && out.length < most; at++) {
    const name = sorted[at] ?? ''
    if (!name.startsWith(text)) break
    out.push(name)
  }
  return out
}

/** Names that begin as typed, the shortest first: who typed this much is nearest to those. */
export function shortestBeginningWith(sorted: readonly string[], text: string, most: number): string[] {
  const found: string[] = []
  for (const name of beginningWith(sorted, text, sorted.length)) {
    const last = found.at(-1)
    if (found.length === most && last !== undefined && last.length <= name.length) continue
    const at = found.findIndex((other) => other.length > name.length)
    found.splice(at < 0 ? found.length : at, 0, name)
    if (found.length > most) found.pop()
  }
  return found
}
