/** How far a quotient may lie off a whole number and still be that number: rounding of binary fractions. */
const WHOLE = 1e-9
const RELATIVE = 1e-14

/**
 * Parts of a whole number of units that add up exactly, by the method of the largest remainder.
 *
 *   ideal_i = units · weight_i / Σ weight;  each gets floor(ideal_i), the rest goes to the largest remainders
 *
 * @param units    whole units to hand out [-], 0 or more
 * @param weights  finite, 0 or more, not all 0
 * @returns        whole numbers in the order of the weights; ties go to the earlier one
 * @throws RangeError when `units` is no whole number or a weight is negative or no number
 *
 * No part is off by a unit or more; none is negative. Known as Hamilton's method.
 */
export function apportion(units: number, weights: readonly number[]): number[] {
  if (!Number.isInteger(units) || units < 0) throw new RangeError(`units: expected a whole number, got ${units}`)
  const sum = weights.reduce((total, weight) => total + weight, 0)
  if (!weights.every((weight) => weight >= 0) || !(sum > 0 && sum < Infinity)) {
    throw new RangeError(`weights: expected numbers from 0 that are not all 0, got ${weights.join(', ')}`)
  }
  const ideals = weights.map((weight) => snapped((units * weight) / sum))
  const parts = ideals.map(Math.floor)
  const left = units - parts.reduce((total, part) => total + part, 0)
  const byRemainder = ideals
    .map((ideal, at) => ({ at, remainder: ideal - Math.floor(ideal) }))
    .sort((a, b) => b.remainder - a.remainder || a.at - b.at)
  for (const { at } of byRemainder.slice(0, left)) parts[at] = (parts[at] ?? 0) + 1
  return parts
}

function snapped(value: number): number {
  const near = Math.round(value)
  return Math.abs(value - near) <= WHOLE + RELATIVE * value ? near : value
}
