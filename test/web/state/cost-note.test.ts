import { expect, test } from 'vitest'
import { costNote } from '#web/format/cost-note.ts'
import type { Formula } from '#web/state/to-formula.ts'

const oil = (ingredient: string): Formula => ({
  ...{ market: 'eu', product: 'leave-on', ph: null, hottest_c: 70 },
  lines: [
    { ingredient: 'cera-alba', share_percent: 90 },
    { ingredient, share_percent: 10 },
  ],
})
const note = (prices: Record<string, number>) =>
  costNote({ before: oil('a'), after: oil('b'), labelOf: (id) => id.toUpperCase(), money: { prices, currency: 'EUR' } })

test('nothing is said before a price is known', () => expect(note({})).toBe(''))
test('a tenth of a kilogram at 20 for one at 8 is 1.20 dearer', () =>
  expect(note({ a: 8, b: 20 })).toBe('1.20 EUR dearer per kg'))
test('the other way round it is cheaper', () => expect(note({ a: 20, b: 8 })).toBe('1.20 EUR cheaper per kg'))
test('the same price costs the same', () => expect(note({ a: 8, b: 8 })).toBe('costs the same'))
test('a price that is missing is named', () => expect(note({ a: 8 })).toBe('cost not known: no price of B'))
