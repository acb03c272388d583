import type { Formula } from './to-formula.ts'

export type Prices = Readonly<Record<string, number>>

/** Share of each ingredient [%]; the line that fills up takes what the others leave. */
export function sharesOf({ lines }: Formula): Map<string, number> {
  const filled_percent = 100 - lines.reduce((sum, { share_percent }) => sum + (share_percent ?? 0), 0)
  const shares = new Map<string, number>()
  for (const { ingredient, share_percent } of lines) {
    shares.set(ingredient, (shares.get(ingredient) ?? 0) + (share_percent ?? Math.max(0, filled_percent)))
  }
  return shares
}

/** Shares that differ by less are the same: recipes are rounded on their way. */
const SAME_PERCENT = 0.0005

export type CostChange = { change_per_kg: number } | { lacking: string[] }

/**
 * What a swap adds to the price of one kilogram of the product.
 *
 *   change = sum over the ingredients of (share after - share before) / 100 x price per kilogram
 *
 * Only of what changes must the price be known; where one is not, nothing is worked out and it is named.
 */
export function costChange(before: Formula, after: Formula, prices: Prices): CostChange {
  const [was, is] = [sharesOf(before), sharesOf(after)]
  const moved = [...new Set([...was.keys(), ...is.keys()])]
    .map((id) => ({ id, step_percent: (is.get(id) ?? 0) - (was.get(id) ?? 0) }))
    .filter(({ step_percent }) => Math.abs(step_percent) > SAME_PERCENT)
  const lacking = moved.filter(({ id }) => prices[id] === undefined).map(({ id }) => id)
  if (lacking.length > 0) return { lacking }
  return {
    change_per_kg: moved.reduce((sum, { id, step_percent }) => sum + (step_percent / 100) * (prices[id] ?? 0), 0),
  }
}
