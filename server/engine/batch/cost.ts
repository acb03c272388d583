import type { BatchCost } from '#engine/model/batch.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Item } from './item.ts'

const DECIMALS = 4
const GRAMS_A_KG = 1000

export interface Prices {
  /** by record id */
  perKg: ReadonlyMap<string, number>
  currency: string | null
}

/** Cost of a line as weighed; undefined where its price is not known. */
export function costOf(item: Item, step_g: number, prices: Prices): number | undefined {
  const price = prices.perKg.get(item.line.subject.id)
  return price === undefined ? undefined : (item.units * step_g * price) / GRAMS_A_KG
}

/** Sum over the batch. A missing price is named, never 0: then there is no total. */
export function batchCost(items: readonly Item[], step_g: number, prices: Prices): BatchCost {
  const missing = items.filter((item) => costOf(item, step_g, prices) === undefined).map(({ key }) => key)
  const known = items.reduce((sum, item) => sum + (costOf(item, step_g, prices) ?? 0), 0)
  const mass_g = items.reduce((sum, { units }) => sum + units * step_g, 0)
  const used = new Set(items.map(({ line }) => line.subject.id))
  return {
    currency: prices.currency,
    known: roundTo(known, DECIMALS),
    total: missing.length > 0 ? null : roundTo(known, DECIMALS),
    per_100_g: missing.length > 0 ? null : roundTo((known / mass_g) * 100, DECIMALS),
    missing,
    unused: [...prices.perKg.keys()].filter((id) => !used.has(id)).sort(),
  }
}
