export const AXIS = { from: 2, to: 12 } as const

interface Range {
  min?: number
  max?: number
}

/** Place of a pH on the axis [px from its left end]; what lies beyond the axis is drawn at its end. */
export function xOf(ph: number, width_px: number): number {
  const inside = Math.min(AXIS.to, Math.max(AXIS.from, ph))
  return ((inside - AXIS.from) / (AXIS.to - AXIS.from)) * width_px
}

/** Left end and width of a window on the axis [px]; an open end reaches the end of the axis. */
export function barOf(range: Range, width_px: number): { x: number; width: number } {
  const left = xOf(range.min ?? AXIS.from, width_px)
  const right = xOf(range.max ?? AXIS.to, width_px)
  return { x: left, width: Math.max(2, right - left) }
}
