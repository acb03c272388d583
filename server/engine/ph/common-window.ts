import type { FormulaContext } from '#engine/formula/context.ts'
import { overlap } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import { lineWindows } from './line-window.ts'
import type { LineWindow } from './line-window.ts'

/** An end of a common window and the lines that set it. */
export interface WindowEnd {
  ph: number
  setBy: LineWindow[]
}

/** Two windows that do not meet, and the gap between them. */
export interface Excluding {
  lower: LineWindow
  upper: LineWindow
  gap: { min: number; max: number }
}

/** What all windows leave. Where they leave nothing, `low` lies above `high` and `excludes` says why. */
export interface CommonWindow {
  window: Range | null
  low: WindowEnd | null
  high: WindowEnd | null
  /** between the lowest upper and the highest lower end, where nothing is left */
  gap: { min: number; max: number } | null
  excludes: Excluding[]
}

/** The end that cuts deepest: the highest lower end or the lowest upper end. */
function endOf(windows: readonly LineWindow[], side: 'min' | 'max'): WindowEnd | null {
  const ends = windows.flatMap(({ window }) => window[side] ?? [])
  if (ends.length === 0) return null
  const ph = side === 'min' ? Math.max(...ends) : Math.min(...ends)
  return { ph, setBy: windows.filter(({ window }) => window[side] === ph) }
}

/** Pairs that exclude each other, the widest gap first; ties by id. */
function excluding(windows: readonly LineWindow[]): Excluding[] {
  const pairs = windows.flatMap((lower) =>
    windows.flatMap((upper) => {
      const min = lower.window.max ?? Infinity
      const max = upper.window.min ?? -Infinity
      return min < max ? [{ lower, upper, gap: { min, max } }] : []
    }),
  )
  const key = ({ lower, upper }: Excluding): string =>
    `${lower.ingredient} ${lower.kind} ${upper.ingredient} ${upper.kind}`
  return pairs.sort((a, b) => b.gap.max - b.gap.min - (a.gap.max - a.gap.min) || (key(a) < key(b) ? -1 : 1))
}

const overlapOf = (windows: readonly LineWindow[]): Range | null =>
  windows.reduce<Range | null>((common, one) => common && overlap(common, one.window), {})

/** The pH that these windows have in common, with who sets each end. Without any window it is open at both ends. */
export function commonOf(windows: readonly LineWindow[]): CommonWindow {
  const window = overlapOf(windows)
  const low = endOf(windows, 'min')
  const high = endOf(windows, 'max')
  const gap = window === null && low && high ? { min: high.ph, max: low.ph } : null
  return { window, low, high, gap, excludes: excluding(windows) }
}

/** The pH that every line accepts: where it keeps and, for what has to work at a pH, where it works. Null where there is none. */
export const commonPh = (context: FormulaContext): Range | null => overlapOf(lineWindows(context))
