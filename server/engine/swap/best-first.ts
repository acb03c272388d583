/** One choice for a place, with what it is worth at most; lists of choices are sorted, the best first. */
export interface Worth {
  worth: number
}

const keyOf = (at: readonly number[]): string => at.join(' ')

/**
 * All combinations of one choice from each list in falling order of their mean worth, lazily: who stops early has
 * passed over nothing better. Ties go by position.
 */
export function* bestFirst<T extends Worth>(
  lists: readonly (readonly T[])[],
): Generator<{ chosen: T[]; bound: number }> {
  const choose = (at: readonly number[]) => lists.map((list, place) => list[at[place] ?? 0])
  const open: { at: number[]; bound: number }[] = []
  const seen = new Set<string>()
  const add = (at: number[]): void => {
    const chosen = choose(at)
    if (seen.has(keyOf(at)) || chosen.some((one) => one === undefined)) return
    seen.add(keyOf(at))
    const bound = chosen.reduce((sum, one) => sum + (one?.worth ?? 0), 0) / lists.length
    // Kept sorted from worst to best: the best is taken off the end.
    let place = open.length
    while (place > 0 && (open[place - 1]?.bound ?? 0) > bound) place -= 1
    open.splice(place, 0, { at, bound })
  }
  add(lists.map(() => 0))
  for (let next = open.pop(); next; next = open.pop()) {
    const { at, bound } = next
    yield { chosen: choose(at).filter((one) => one !== undefined), bound }
    at.forEach((_, place) => add(at.map((index, other) => (other === place ? index + 1 : index))))
  }
}
