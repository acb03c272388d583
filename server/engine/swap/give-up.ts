import type { Say } from '#engine/words/say.ts'
import type { SwapsReply, Wishes } from '#engine/model/swap.ts'

/** One wish that can be given up by itself, with its name on the wire. */
interface Atom {
  name: string
  text: (say: Say) => string
  without(wishes: Wishes): Wishes
}

const omit = <K extends keyof Wishes>(wishes: Wishes, key: K): Wishes => {
  const { [key]: _gone, ...rest } = wishes
  return rest
}

function atomsOf(wishes: Wishes): Atom[] {
  const { hottest_c } = wishes
  return [
    ...(wishes.only
      ? [{ name: 'only', text: (say: Say) => say`only what is on the shelf`, without: (w: Wishes) => omit(w, 'only') }]
      : []),
    ...(wishes.without ?? []).map((id) => ({
      name: `without:${id}`,
      text: (say: Say) => say`no ${say.text(id.replaceAll('-', ' '))}`,
      without: (w: Wishes) => ({ ...w, without: (w.without ?? []).filter((other) => other !== id) }),
    })),
    ...(hottest_c !== undefined
      ? [
          {
            name: 'hottest_c',
            text: (say: Say) => say`no more than ${hottest_c} °C`,
            without: (w: Wishes) => omit(w, 'hottest_c'),
          },
        ]
      : []),
    ...(wishes.keepPh
      ? [{ name: 'keepPh', text: (say: Say) => say`the pH stays`, without: (w: Wishes) => omit(w, 'keepPh') }]
      : []),
  ]
}

/** Subsets of a size, in the order of their members. */
function* subsets<T>(all: readonly T[], size: number, from = 0): Generator<T[]> {
  if (size === 0) yield []
  for (let at = from; size > 0 && at < all.length; at++) {
    const one = all[at]
    if (one !== undefined) for (const rest of subsets(all, size - 1, at + 1)) yield [one, ...rest]
  }
}

const MOST_GIVEN_UP = 3
const MOST_TRIALS = 40
const MOST_ANSWERS = 4
const MOST_ALLOWED = 5

/**
 * The smallest sets of wishes whose giving up brings a stand-in: all of the least size that does, none of them
 * larger than needed.
 * @param ask  the search with other wishes
 */
export function giveUp(
  wishes: Wishes,
  ask: (wishes: Wishes) => SwapsReply,
  say: Say,
): NonNullable<SwapsReply['giveUp']> {
  const atoms = atomsOf(wishes)
  let trials = 0
  for (let size = 1; size <= Math.min(MOST_GIVEN_UP, atoms.length); size++) {
    const found: NonNullable<SwapsReply['giveUp']> = []
    for (const set of subsets(atoms, size)) {
      if ((trials += 1) > MOST_TRIALS) return found
      const reply = ask(set.reduce((left, atom) => atom.without(left), wishes))
      if (reply.swaps.length === 0) continue
      const allows = reply.swaps
        .slice(0, MOST_ALLOWED)
        .flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient))
      found.push({
        wishes: set.map(({ name }) => name),
        text: say`Without the wish "${set.map(({ text }) => text(say)).join(say`" and "`)}"`,
        allows: [...new Set(allows)],
      })
    }
    if (found.length > 0) return found.slice(0, MOST_ANSWERS)
  }
  return []
}
