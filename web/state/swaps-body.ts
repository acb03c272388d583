import type { SwapsBody } from '#web/client/use-swaps.ts'
import type { WishList } from './bench.ts'
import type { Shelf } from './shelf.ts'
import type { Formula } from './to-formula.ts'

const COLD_C = 40
const MOST = 12

/** The question for stand-ins; null while there is nothing to ask. */
export function swapsBody(
  formula: Formula | null,
  missing: string[],
  wishes: WishList,
  shelf: Shelf,
  about: string | null = null,
): SwapsBody | null {
  if (formula === null || missing.length === 0) return null
  const only = wishes.onlyShelf && shelf.ids.length > 0 ? { only: shelf.ids } : {}
  const without = wishes.without.length > 0 ? { without: [...wishes.without].sort() } : {}
  const moved = Object.fromEntries(Object.entries(wishes.weights ?? {}).filter(([, factor]) => factor !== 1))
  const asked = {
    ...only,
    ...without,
    ...(wishes.cold && { hottest_c: COLD_C }),
    ...(wishes.keepPh && { keepPh: true }),
    ...(wishes.alsoInventory && { alsoInventory: true }),
    ...(Object.keys(moved).length > 0 && { weights: moved }),
  }
  return {
    formula,
    missing,
    ...(Object.keys(asked).length > 0 && { wishes: asked }),
    ...(about !== null && missing.length === 1 && { about: [about] }),
    limit: MOST,
  }
}

/** Ids that the reply speaks of, to ask for their names. */
export function idsIn(reply: {
  swaps: { lines: { ingredient: string }[]; path: { from: string; to: string }[]; formula?: Formula }[]
  refused: { lines: { ingredient: string }[] }[]
  giveUp?: { allows: string[] }[]
  about?: { ingredient: string }[]
}): string[] {
  const ids = [
    ...reply.swaps.flatMap(({ lines, path, formula }) => [
      ...lines.map(({ ingredient }) => ingredient),
      ...path.flatMap(({ from, to }) => [from, to]),
      ...(formula?.lines.map(({ ingredient }) => ingredient) ?? []),
    ]),
    ...(reply.giveUp ?? []).flatMap(({ allows }) => allows),
    ...(reply.about ?? []).map(({ ingredient }) => ingredient),
    ...reply.refused.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient)),
  ]
  return [...new Set(ids)].sort()
}
