import { costChange } from '#web/state/swap-cost.ts'
import type { Prices } from '#web/state/swap-cost.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { sheet as T } from '#web/text/sheet.ts'
import { costText } from './mass.ts'

export interface Money {
  prices: Prices
  currency: string
}

interface Swapped {
  before: Formula
  after: Formula
  labelOf: (id: string) => string
  money: Money
}

/** What a swap adds to a kilogram of the product, in words; nothing before any price is known. */
export function costNote({ before, after, labelOf, money }: Swapped): string {
  if (Object.keys(money.prices).length === 0) return ''
  const cost = costChange(before, after, money.prices)
  if ('lacking' in cost) return T.prices.lacking(cost.lacking.map(labelOf).join(', '))
  const amount = costText(Math.abs(cost.change_per_kg), money.currency)
  if (Number.parseFloat(amount.replace(',', '.')) === 0) return T.prices.same
  return cost.change_per_kg > 0 ? T.prices.dearer(amount) : T.prices.cheaper(amount)
}
