/** The value below which a share of the list lies; NaN of nothing. */
export function quantile(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN
}

export const round = (value: number, digits = 3): number => Number(value.toPrecision(digits))

/**
 * Time of each call [ms], the fastest of several rounds: what another process takes from the machine in one round it
 * seldom takes again. A first part of the list runs beforehand so that the code is compiled.
 */
export function timesOf<T>(inputs: readonly T[], call: (input: T) => unknown, rounds: number): number[] {
  for (const input of inputs.slice(0, Math.min(100, inputs.length))) call(input)
  const best = inputs.map(() => Infinity)
  for (let n = 0; n < rounds; n++) {
    for (const [at, input] of inputs.entries()) {
      const start = performance.now()
      call(input)
      best[at] = Math.min(best[at]!, performance.now() - start)
    }
  }
  return best
}

/** Memory in use after a collection [MB]; only a rough figure without --expose-gc. */
export function used_mb(): number {
  globalThis.gc?.()
  const { heapUsed, external } = process.memoryUsage()
  return (heapUsed + external) / 1e6
}
