import { freshKey } from './bench.ts'
import type { Bench, BenchLine, Settings, WishList } from './bench.ts'

type Change = Partial<Omit<BenchLine, 'key' | 'trouble'>>
export const MOST_MISSING = 3

export function editLine(bench: Bench, key: string, change: Change): Bench {
  return { ...bench, lines: bench.lines.map((line) => (line.key === key ? { ...line, ...change } : line)) }
}

/** Sets a share by hand; the line no longer fills up and has no trouble with its share. */
export function setShare(bench: Bench, key: string, share_percent: number | null): Bench {
  return {
    ...bench,
    lines: bench.lines.map((line): BenchLine => {
      if (line.key !== key) return line
      const { trouble: _, ...rest } = line
      return { ...rest, share_percent, fills: false }
    }),
  }
}

/** Lets one line fill up to 100; any other that did so keeps the share it came to. */
export function letFill(bench: Bench, key: string, came_to_percent: number | null): Bench {
  return {
    ...bench,
    lines: bench.lines.map((line): BenchLine => {
      if (line.key !== key) return line.fills ? { ...line, fills: false, share_percent: came_to_percent } : line
      const { trouble: _, ...rest } = line
      return { ...rest, share_percent: null, fills: true }
    }),
  }
}

/** Brings the shares to 100 by scaling them alike. */
export function scaleTo100(bench: Bench): Bench {
  const sum = bench.lines.reduce((total, { share_percent }) => total + (share_percent ?? 0), 0)
  if (sum <= 0) return bench
  return {
    ...bench,
    lines: bench.lines.map((line) =>
      line.share_percent === null
        ? line
        : { ...line, share_percent: Number(((line.share_percent / sum) * 100).toFixed(4)) },
    ),
  }
}

/** Sets a share by the mass that goes into the batch; nothing without a batch size. */
export function setGrams(bench: Bench, key: string, mass_g: number | null): Bench {
  const { batch_g } = bench.settings
  if (batch_g === null) return bench
  return setShare(bench, key, mass_g === null ? null : Number(((mass_g / batch_g) * 100).toFixed(6)))
}

/** Puts a line at a place, counted from 0; the others close up. Beyond the ends it goes to the end. */
export function moveLine(bench: Bench, key: string, to: number): Bench {
  const from = bench.lines.findIndex((line) => line.key === key)
  const line = bench.lines[from]
  const place = Math.max(0, Math.min(bench.lines.length - 1, to))
  if (!line || place === from) return bench
  const others = bench.lines.filter((one) => one !== line)
  return { ...bench, lines: [...others.slice(0, place), line, ...others.slice(place)] }
}

/** What a person picked from the list of names: a line that needs no reading. */
export interface Picked {
  ingredient: string
  name: string
}

/** Another ingredient in a line, with its share and phase as they are. */
export function renameLine(bench: Bench, key: string, { ingredient, name }: Picked): Bench {
  return {
    ...bench,
    lines: bench.lines.map((line): BenchLine => {
      if (line.key !== key) return line
      const { strength_percent: _, ...rest } = line
      return { ...rest, kind: 'ingredient', name, typed: '', chosen: ingredient, aside: false, missing: false }
    }),
  }
}

/** A new line at the end, its share still to be given. */
export function addPicked(bench: Bench, { ingredient, name }: Picked): Bench {
  const line: BenchLine = {
    key: freshKey(bench.lines),
    kind: 'ingredient',
    typed: '',
    name,
    chosen: ingredient,
    share_percent: null,
    fills: false,
    phase: null,
    aside: false,
    missing: false,
  }
  return { ...bench, lines: [...bench.lines, line] }
}

export const removeLine = (bench: Bench, key: string): Bench => ({
  ...bench,
  lines: bench.lines.filter((line) => line.key !== key),
})

/** Marks a line as missing or takes the mark off; a fourth mark changes nothing. */
export function toggleMissing(bench: Bench, key: string): Bench {
  const line = bench.lines.find((one) => one.key === key)
  const marked = bench.lines.filter(({ missing }) => missing).length
  if (!line || (!line.missing && marked >= MOST_MISSING)) return bench
  return editLine(bench, key, { missing: !line.missing })
}

export const setSettings = (bench: Bench, change: Partial<Settings>): Bench => ({
  ...bench,
  settings: { ...bench.settings, ...change },
})

/** Moves how much a criterion counts; as usual again is no wish. */
export function setWeight(bench: Bench, criterion: string, factor: number): Bench {
  const { [criterion]: _, ...others } = bench.wishes.weights ?? {}
  return setWishes(bench, { weights: factor === 1 ? others : { ...others, [criterion]: factor } })
}

export const setWishes = (bench: Bench, change: Partial<WishList>): Bench => ({
  ...bench,
  wishes: { ...bench.wishes, ...change },
})
