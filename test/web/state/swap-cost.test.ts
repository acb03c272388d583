import { expect, test } from 'vitest'
import { costChange, sharesOf } from '#web/state/swap-cost.ts'
import type { Formula } from '#web/state/to-formula.ts'

const formula = (lines: Formula['lines']): Formula => ({
  ...{ market: 'eu', product: 'leave-on', ph: 5.5, hottest_c: 40, lines },
})
const before = formula([
  { ingredient: 'aqua', fills: true },
  { ingredient: 'glycerin', share_percent: 4 },
])
const after = formula([
  { ingredient: 'aqua', share_percent: 95 },
  { ingredient: 'propanediol', share_percent: 5 },
])

test('the line that fills up takes what the others leave', () => expect(sharesOf(before).get('aqua')).toBe(96))

test('what a swap adds to a kilogram is the shares that move times their prices', () => {
  // 0.05 x 12 - 0.04 x 5 - 0.01 x 1
  const change = costChange(before, after, { aqua: 1, glycerin: 5, propanediol: 12 })
  expect(change).toEqual({ change_per_kg: expect.closeTo(0.39, 10) })
})

test('a price that is not known is never nothing: it is named', () =>
  expect(costChange(before, after, { glycerin: 5 })).toEqual({ lacking: ['aqua', 'propanediol'] }))

test('only what changes needs a price', () => expect(costChange(before, before, {})).toEqual({ change_per_kg: 0 }))
