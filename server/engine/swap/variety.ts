import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'

const TELLING_LETTERS = 6
/** A word in more names than this (sodium, glyceryl) does not make two substances kin. */
const MOST_NAMES = 40

const countsOf = new WeakMap<World, ReadonlyMap<string, number>>()

const wordsOf = ({ id }: Subject): string[] => id.split('-').filter((word) => word.length >= TELLING_LETTERS)

function wordCounts(world: World): ReadonlyMap<string, number> {
  const known = countsOf.get(world)
  if (known) return known
  const counts = new Map<string, number>()
  for (const subject of world.subjects)
    for (const word of new Set(wordsOf(subject))) counts.set(word, (counts.get(word) ?? 0) + 1)
  countsOf.set(world, counts)
  return counts
}

/** Words of the name that few others carry. */
function tellingWords(subject: Subject, world: World): string[] {
  const counts = wordCounts(world)
  return wordsOf(subject).filter((word) => (counts.get(word) ?? 0) <= MOST_NAMES)
}

/** What a second or third near relative of one already named is worth less: whoever lacks the one often lacks the other. */
const KIN_COST = 0.04
const MOST_KIN = 2

/**
 * The same proposals in an order that offers a choice: by rank, but each near relative of those already named comes a
 * little later.
 */
export function inVariety<T>(
  ranked: readonly T[],
  { world, subjectOf, rankOf }: { world: World; subjectOf(one: T): Subject; rankOf(one: T): number },
): T[] {
  const left = ranked.map((one) => ({ one, words: tellingWords(subjectOf(one), world) }))
  const order: T[] = []
  const named = new Map<string, number>()
  while (left.length > 0) {
    let best = 0
    let worth = -Infinity
    left.forEach(({ one, words }, at) => {
      const kin = Math.max(0, ...words.map((word) => named.get(word) ?? 0))
      const here = rankOf(one) - KIN_COST * Math.min(MOST_KIN, kin)
      if (here > worth) [best, worth] = [at, here]
    })
    for (const { one, words } of left.splice(best, 1)) {
      order.push(one)
      for (const word of words) named.set(word, (named.get(word) ?? 0) + 1)
    }
  }
  return order
}
