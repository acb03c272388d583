import type { Range } from '#engine/units/range.ts'

/** What a thing is asked by: the words that hold of it, and its windows by name. */
export interface ScreenEntry {
  keys: ReadonlySet<string>
  windows: Readonly<Record<string, Range | undefined>>
}

/** All that is given must hold. */
export interface ScreenQuestion {
  /** of each list at least one word */
  all?: readonly (readonly string[])[]
  /** none of these words */
  none?: readonly string[]
  /** windows that must hold a value; `unknown`: a thing that states no such window fits too */
  within?: readonly { window: string; value: number; unknown: boolean }[]
  /** those with more of these words come first */
  rankBy?: readonly string[]
}

export interface Screen {
  /** places of the entries that fit, the highest rank first, equals in their order */
  find(question: ScreenQuestion): number[]
}

const holds = (window: Range | undefined, value: number, unknown: boolean): boolean =>
  window ? value >= (window.min ?? -Infinity) && value <= (window.max ?? Infinity) : unknown

/** Whether one entry fits: the meaning of a question, in plain words. */
export const fits = ({ keys, windows }: ScreenEntry, { all = [], none = [], within = [] }: ScreenQuestion): boolean =>
  all.every((some) => some.some((key) => keys.has(key))) &&
  !none.some((key) => keys.has(key)) &&
  within.every(({ window, value, unknown }) => holds(windows[window], value, unknown))

const WORD_BITS = 32

interface Window {
  min: Float64Array
  max: Float64Array
}

/** Window of all entries by name; where an entry states none both ends are not a number. */
function windowsOf(entries: readonly ScreenEntry[]): Map<string, Window> {
  const windows = new Map<string, Window>()
  for (const [place, entry] of entries.entries()) {
    for (const [name, range] of Object.entries(entry.windows)) {
      const known = windows.get(name)
      const window = known ?? {
        min: new Float64Array(entries.length).fill(NaN),
        max: new Float64Array(entries.length).fill(NaN),
      }
      if (!known) windows.set(name, window)
      if (!range) continue
      window.min[place] = range.min ?? -Infinity
      window.max[place] = range.max ?? Infinity
    }
  }
  return windows
}

/** For each word the set of entries of which it holds, one bit an entry. */
function setsOf(entries: readonly ScreenEntry[], words: number): Map<string, Uint32Array> {
  const sets = new Map<string, Uint32Array>()
  for (const [place, { keys }] of entries.entries()) {
    for (const key of keys) {
      const set = sets.get(key) ?? new Uint32Array(words)
      if (!sets.has(key)) sets.set(key, set)
      set[place >>> 5] = (set[place >>> 5] ?? 0) | (1 << (place & 31))
    }
  }
  return sets
}

/** Union of sets; undefined stands for the empty one. */
function union(sets: readonly (Uint32Array | undefined)[], words: number): Uint32Array {
  const out = new Uint32Array(words)
  for (const set of sets) if (set) for (let at = 0; at < words; at++) out[at] = (out[at] ?? 0) | (set[at] ?? 0)
  return out
}

/** Takes out of one set what is not in another, or what is in it. */
function keepOnly(set: Uint32Array, other: Uint32Array): void {
  for (let at = 0; at < set.length; at++) set[at] = (set[at] ?? 0) & (other[at] ?? 0)
}
function takeOut(set: Uint32Array, other: Uint32Array): void {
  for (let at = 0; at < set.length; at++) set[at] = (set[at] ?? 0) & ~(other[at] ?? 0)
}

/** Places of a set, ascending. */
function placesOf(set: Uint32Array): number[] {
  const places: number[] = []
  for (let at = 0; at < set.length; at++) {
    for (let left = set[at] ?? 0; left !== 0; left &= left - 1) {
      places.push(at * WORD_BITS + WORD_BITS - 1 - Math.clz32(left & -left))
    }
  }
  return places
}

const isIn = (set: Uint32Array | undefined, place: number): boolean =>
  set !== undefined && (((set[place >>> 5] ?? 0) >>> (place & 31)) & 1) === 1

/** Puts places with more of the sets first without changing the order of equals. */
function ranked(places: readonly number[], sets: readonly (Uint32Array | undefined)[]): number[] {
  const byRank: number[][] = sets.map(() => [])
  const none: number[] = []
  for (const place of places) {
    const rank = sets.reduce((count, set) => count + (isIn(set, place) ? 1 : 0), 0)
    ;(byRank[rank - 1] ?? none).push(place)
  }
  return [...byRank.reverse(), none].flat()
}

/**
 * An index that answers the same as `fits` over all entries, many times as fast: a set of bits for each word, windows as
 * flat numbers. Built once for entries that do not change.
 */
export function buildScreen(entries: readonly ScreenEntry[]): Screen {
  const words = Math.ceil(entries.length / WORD_BITS)
  const sets = setsOf(entries, words)
  const windows = windowsOf(entries)
  const everything = new Uint32Array(words)
  for (let place = 0; place < entries.length; place++) {
    everything[place >>> 5] = (everything[place >>> 5] ?? 0) | (1 << (place & 31))
  }
  const isWithin = (place: number, within: Required<ScreenQuestion>['within']): boolean =>
    within.every(({ window, value, unknown }) => {
      const { min, max } = windows.get(window) ?? {}
      const low = min?.[place] ?? NaN
      return Number.isNaN(low) ? unknown : value >= low && value <= (max?.[place] ?? Infinity)
    })
  return {
    find({ all = [], none = [], within = [], rankBy = [] }) {
      const left = everything.slice()
      for (const some of all)
        keepOnly(
          left,
          union(
            some.map((key) => sets.get(key)),
            words,
          ),
        )
      for (const key of none) {
        const set = sets.get(key)
        if (set) takeOut(left, set)
      }
      const places = placesOf(left).filter((place) => isWithin(place, within))
      return rankBy.length > 0
        ? ranked(
            places,
            rankBy.map((key) => sets.get(key)),
          )
        : places
    },
  }
}
