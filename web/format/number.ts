/** A figure with at most `digits` decimals and no trailing zeros. */
export const upTo = (value: number, digits: number): string => Number(value.toFixed(digits)).toString()

/** Share [%] as text: enough digits to weigh by, no more. */
export const shareText = (share_percent: number): string => `${upTo(share_percent, share_percent < 1 ? 3 : 2)} %`

/** Mass [g] as text; finer for small amounts. */
export const gramsText = (mass_g: number): string => `${upTo(mass_g, mass_g < 1 ? 3 : mass_g < 100 ? 2 : 1)} g`

/** "4 to 7", "from 4", "up to 7" or nothing. */
export function rangeText(range: { min?: number; max?: number }): string {
  if (range.min !== undefined && range.max !== undefined) {
    return range.min === range.max ? upTo(range.min, 3) : `${upTo(range.min, 3)} to ${upTo(range.max, 3)}`
  }
  if (range.min !== undefined) return `from ${upTo(range.min, 3)}`
  return range.max === undefined ? '' : `up to ${upTo(range.max, 3)}`
}
