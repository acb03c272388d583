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
