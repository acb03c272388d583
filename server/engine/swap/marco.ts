/** Does the fault arise from these parts alone? */
export type Fires<T> = (parts: readonly T[]) => boolean

/** QuickXplain (Junker 2004): a part of `open` that, beside `kept`, makes the fault arise; small, not yet proven minimal. */
function explain<T>(kept: readonly T[], added: readonly T[], open: readonly T[], fires: Fires<T>): T[] {
  if (added.length > 0 && fires(kept)) return []
  if (open.length <= 1) return [...open]
  const half = Math.ceil(open.length / 2)
  const [first, second] = [open.slice(0, half), open.slice(half)]
  const fromSecond = explain([...kept, ...first], first, second, fires)
  const fromFirst = explain([...kept, ...fromSecond], fromSecond, first, fires)
  return [...fromFirst, ...fromSecond]
}

/** Takes away what may be missing until no single part may: a rule about a lack can fire on fewer parts than it needs. */
function shrink<T>(parts: readonly T[], fires: Fires<T>): T[] {
  for (const part of parts) {
    const rest = parts.filter((other) => other !== part)
    if (rest.length > 0 && fires(rest)) return shrink(rest, fires)
  }
  return [...parts]
}

/** One set of parts from which the fault arises and of which none may be missing; all parts must make it arise. */
export const minimalSet = <T>(parts: readonly T[], fires: Fires<T>): T[] => shrink(explain([], [], parts, fires), fires)

interface Map<T> {
  /** sets from which the fault arises: at least one member has to stay out */
  faulty: T[][]
  /** sets from which it does not: at least one part from outside has to be in */
  sound: ReadonlySet<T>[]
}

/** A set not yet explored, as large as it can be, or null: at least one member of each faulty set out, none a part of a sound set. */
function unexplored<T>(parts: readonly T[], { faulty, sound }: Map<T>, out: ReadonlySet<T> = new Set()): T[] | null {
  const open = faulty.find((set) => !set.some((part) => out.has(part)))
  if (!open) {
    const seed = parts.filter((part) => !out.has(part))
    return seed.length > 0 && sound.every((set) => seed.some((part) => !set.has(part))) ? seed : null
  }
  for (const part of open) {
    const seed = unexplored(parts, { faulty, sound }, new Set([...out, part]))
    if (seed) return seed
  }
  return null
}

/** More looks than this no answer is worth. */
const MOST_SEEDS = 24

/**
 * Up to `most` different minimal sets of parts from which a fault arises: seeds from the map of what is unexplored,
 * shrunk when faulty, blocked with all their parts when not.
 * Source: MARCO, Liffiton, Previti, Malik and Marques-Silva, Constraints 21 (2016) 223 (from memory).
 */
export function minimalSets<T>(parts: readonly T[], fires: Fires<T>, most: number): T[][] {
  const map: Map<T> = { faulty: [], sound: [] }
  for (let look = 0; look < MOST_SEEDS && map.faulty.length < most; look++) {
    const seed = unexplored(parts, map)
    if (!seed) break
    if (fires(seed)) map.faulty.push(minimalSet(seed, fires))
    else map.sound.push(new Set(seed))
  }
  return map.faulty
}
