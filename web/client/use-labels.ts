import { useResolve } from './use-resolve.ts'

/** An id as words, for the time until its name is known. */
export const plainLabel = (id: string): string => {
  const words = id.replace(/^\w+:/, '').replaceAll('-', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}

/** INCI names in sentence case: whole words in capitals are hard to read in a list. Short ones and those with figures stay. */
export const readable = (inci: string): string =>
  inci
    .toLowerCase()
    .replace(
      /\b(?:peg|ppg|ci|edta|peg\/ppg|vp|dmdm|mea|tea|pca|bht|bha|hc|pvp|va|se|glda|eo|c\d+(?:-\d+)?)\b/g,
      (word) => word.toUpperCase(),
    )
    .replace(/\(and\)/g, 'and')
    .replace(/^\p{L}/u, (letter) => letter.toUpperCase())

/** Names for ids; asks the server for those that it does not know yet. */
export function useLabels(
  ids: readonly string[],
  known: ReadonlyMap<string, string> = new Map(),
): (id: string) => string {
  const open = ids.filter((id) => !known.has(id) && !id.includes(':'))
  const asked = useResolve(open.map((id) => id.replaceAll('-', ' ')))
  return (id) => {
    const own = known.get(id)
    if (own !== undefined) return readable(own)
    const hit = asked.state === 'ready' ? asked.data.get(id.replaceAll('-', ' ')) : undefined
    return hit?.ingredient === id && hit.inci !== null ? readable(hit.inci) : plainLabel(id)
  }
}
