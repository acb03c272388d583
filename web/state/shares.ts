import type { BenchLine } from './bench.ts'

const ROUNDING = 0.05 // the server takes sums within this of 100

export interface ShareSum {
  /** sum of the stated shares [%] */
  stated_percent: number
  /** share that the filling line comes to [%]; null when no line fills or nothing is left */
  filler_percent: number | null
  state: 'adds-up' | 'short' | 'over' | 'no-room' | 'open'
}

const round = (value: number): number => Number(value.toFixed(4))

/** Whether the shares come to 100, and what the line that fills up comes to. */
export function sumShares(lines: readonly BenchLine[]): ShareSum {
  const real = lines.filter(({ kind }) => kind === 'ingredient')
  const stated_percent = round(real.reduce((sum, { share_percent }) => sum + (share_percent ?? 0), 0))
  const isOpen = real.some(({ share_percent, fills }) => share_percent === null && !fills)
  if (real.some(({ fills }) => fills)) {
    const left = round(100 - stated_percent)
    if (left <= 0) return { stated_percent, filler_percent: null, state: 'no-room' }
    return { stated_percent, filler_percent: left, state: isOpen ? 'open' : 'adds-up' }
  }
  const gap = stated_percent - 100
  const state = isOpen ? 'open' : Math.abs(gap) <= ROUNDING ? 'adds-up' : gap < 0 ? 'short' : 'over'
  return { stated_percent, filler_percent: null, state }
}

/** Share of a line [%], the filling line's worked out; null when it is not known. */
export const shareOf = (line: BenchLine, sum: ShareSum): number | null =>
  line.fills ? sum.filler_percent : line.share_percent

/** Mass of a line in a batch [g]; null when the share or the batch size is not known. */
export const gramsOf = (share_percent: number | null, batch_g: number | null): number | null =>
  share_percent === null || batch_g === null ? null : (share_percent / 100) * batch_g
