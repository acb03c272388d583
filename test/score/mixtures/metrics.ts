/** One mixture with the rate that was foretold for it without having seen it. */
export interface Foretold {
  /** surfactants as one word: rows of one pair are no independent trials */
  pair: string
  rate: number
  separated: boolean
}

/** Chance that a mixture that separated was given a higher rate than one that held; ties count a half. */
export function auc(rows: readonly Foretold[]): number {
  const bad = rows.filter(({ separated }) => separated)
  const good = rows.filter(({ separated }) => !separated)
  const wins = bad.reduce(
    (sum, { rate }) => sum + good.reduce((n, other) => n + (rate > other.rate ? 1 : rate === other.rate ? 0.5 : 0), 0),
    0,
  )
  return wins / (bad.length * good.length)
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

/** Mean squared distance of rate and outcome. */
export const brier = (rows: readonly Foretold[]): number =>
  mean(rows.map(({ rate, separated }) => (rate - Number(separated)) ** 2))

const LEAST = 1e-6

/** Mean surprise [nats]. */
export const logLoss = (rows: readonly Foretold[]): number =>
  mean(rows.map(({ rate, separated }) => -Math.log(Math.max(LEAST, separated ? rate : 1 - rate))))

/** Of those at or above the rate: how many separated. NaN where there are none. */
export function precision(rows: readonly Foretold[], from: number): number {
  const called = rows.filter(({ rate }) => rate >= from)
  return called.filter(({ separated }) => separated).length / called.length
}

export interface Bin {
  from: number
  to: number
  n: number
  foretold: number
  seen: number
}

/** Rows by rate in bins of equal width. */
export function reliability(rows: readonly Foretold[], bins = 5): Bin[] {
  return Array.from({ length: bins }, (_, at) => {
    const from = at / bins
    const to = (at + 1) / bins
    const inBin = rows.filter(({ rate }) => rate >= from && (rate < to || at === bins - 1))
    const seen = mean(inBin.map(({ separated }) => Number(separated)))
    return { from, to, n: inBin.length, foretold: mean(inBin.map(({ rate }) => rate)), seen }
  })
}

/** A row of numbers that looks random and is the same on every run (mulberry32). */
export function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

export function groupsOf<T extends { pair: string }>(rows: readonly T[]): T[][] {
  const groups = new Map<string, T[]>()
  for (const row of rows) groups.set(row.pair, [...(groups.get(row.pair) ?? []), row])
  return [...groups.values()]
}

/** Draws as many pairs as there are, with return: whole pairs, since rows of one pair hang together. */
export function resampled<T extends { pair: string }>(rows: readonly T[], random: () => number): T[] {
  const groups = groupsOf(rows)
  return groups.flatMap(() => groups[Math.floor(random() * groups.length)] ?? [])
}

/** 95 % interval of a figure over resampled pairs; draws on which it is not a number are left out. */
export function interval(
  rows: readonly Foretold[],
  figure: (rows: readonly Foretold[]) => number,
  draws = 1000,
): [number, number] {
  const random = chance(7)
  const values = Array.from({ length: draws }, () => figure(resampled(rows, random)))
    .filter((value) => !Number.isNaN(value))
    .sort((a, b) => a - b)
  return [values[Math.floor(0.025 * values.length)] ?? NaN, values[Math.floor(0.975 * values.length)] ?? NaN]
}
