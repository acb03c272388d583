/** A closed interval; a missing end is open. Unit is that of the quantity it describes. */
export interface Range {
  min?: number
  max?: number
}

export const inside = (value: number, range: Range): boolean =>
  value >= (range.min ?? -Infinity) && value <= (range.max ?? Infinity)

/** How far a value lies outside a range, in the range's own unit; 0 inside. */
export function distanceOutside(value: number, range: Range): number {
  if (range.min !== undefined && value < range.min) return range.min - value
  if (range.max !== undefined && value > range.max) return value - range.max
  return 0
}

/** Common part of two ranges, or null where they do not meet. */
export function overlap(a: Range, b: Range): Range | null {
  const min = Math.max(a.min ?? -Infinity, b.min ?? -Infinity)
  const max = Math.min(a.max ?? Infinity, b.max ?? Infinity)
  if (min > max) return null
  return { ...(min > -Infinity && { min }), ...(max < Infinity && { max }) }
}

/** Middle of a range; an open end counts as the other end. Undefined when both ends are open. */
export function middle(range: Range): number | undefined {
  if (range.min === undefined) return range.max
  if (range.max === undefined) return range.min
  return (range.min + range.max) / 2
}

/** Gap between two ranges: 0 where they meet, else the distance of the nearest ends. */
export function gap(a: Range, b: Range): number {
  const up = (b.min ?? -Infinity) - (a.max ?? Infinity)
  const down = (a.min ?? -Infinity) - (b.max ?? Infinity)
  return Math.max(0, up, down)
}

/** "3 to 5", "at most 5", "from 3". */
export function rangeText(range: Range): string {
  if (range.min === undefined) return `at most ${range.max ?? '?'}`
  if (range.max === undefined) return `from ${range.min}`
  return range.min === range.max ? `${range.min}` : `${range.min} to ${range.max}`
}
