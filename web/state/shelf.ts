import type { Question } from '#web/client/question.ts'
import type { ResolvedNames } from '#web/client/use-resolve.ts'
import type { WishList } from './bench.ts'

export interface Shelf {
  ids: string[]
  /** names that are not recognised or have several readings: not used, never guessed */
  unknown: string[]
}

/** The names on a shelf list; lines, commas at line ends and bullets part them. */
export const shelfNames = (written: string): string[] =>
  written
    .split(/[\n;]+/)
    .map((name) => name.replace(/^[\s•*-]+|[\s,.]+$/g, ''))
    .filter((name) => name !== '')
    .slice(0, 1000)

export function shelfOf(wishes: WishList, resolved: Question<ResolvedNames>): Shelf {
  const names = shelfNames(wishes.shelf)
  const idOf = (name: string) => (resolved.state === 'ready' ? resolved.data.get(name.slice(0, 200)) : undefined)
  const ids = names.flatMap((name) => {
    const hit = idOf(name)
    return hit?.status === 'found' && hit.ingredient !== null ? [hit.ingredient] : []
  })
  return {
    ids: [...new Set(ids)].sort(),
    unknown: resolved.state === 'ready' ? names.filter((name) => idOf(name)?.status !== 'found') : [],
  }
}
