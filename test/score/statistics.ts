/** Seeded generator (mulberry32): numbers in [0, 1). */
export function random(seed: number): () => number {
  let a = seed >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = a
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

export const mean = (values: readonly number[]): number =>
  values.length === 0 ? NaN : values.reduce((sum, value) => sum + value, 0) / values.length

const DRAWS = 2000

/** 95 % interval of a mean by the percentile bootstrap over cases, seeded. */
export function interval(values: readonly number[], seed = 1): { low: number; high: number } {
  const next = random(seed)
  const means = Array.from({ length: DRAWS }, () =>
    mean(values.map(() => values[Math.floor(next() * values.length)] ?? 0)),
  ).sort((a, b) => a - b)
  return { low: means[Math.floor(DRAWS * 0.025)] ?? NaN, high: means[Math.floor(DRAWS * 0.975)] ?? NaN }
}

/** Splits a list in two halves by a seed: the order of the list does not matter, only its ids. */
export function halves<T extends { id: string }>(all: readonly T[], seed: number): [T[], T[]] {
  const next = random(seed)
  const drawn = [...all].sort((a, b) => (a.id < b.id ? -1 : 1)).map((one) => ({ one, key: next() }))
  drawn.sort((a, b) => a.key - b.key)
  const half = Math.ceil(drawn.length / 2)
  return [drawn.slice(0, half).map(({ one }) => one), drawn.slice(half).map(({ one }) => one)]
}

/** Value below which a share of the sorted list lies. */
export const quantile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? NaN
