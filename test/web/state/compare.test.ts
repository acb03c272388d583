import { describe, expect, test } from 'vitest'
import type { Finding } from '#web/client/use-check.ts'
import { compareFindings, compareLines, costOf } from '#web/state/compare.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { orderWords } from '#web/parts/use-order-remark.ts'

const formula = (lines: Formula['lines']): Formula => ({
  market: 'eu',
  product: 'leave-on',
  ph: null,
  hottest_c: null,
  lines,
})
const before = formula([
  { ingredient: 'aqua', fills: true },
  { ingredient: 'glycerin', share_percent: 3 },
  { ingredient: 'glycerin', share_percent: 1 },
  { ingredient: 'urea', share_percent: 5 },
])
const after = formula([
  { ingredient: 'glycerin', share_percent: 4 },
  { ingredient: 'sorbitol', share_percent: 6 },
  { ingredient: 'aqua', share_percent: 90 },
])

describe('two recipes line by line', () => {
  test('lines of one ingredient count together, the one that fills up counts what it comes to', () => {
    expect(compareLines(before, after)).toEqual([
      { ingredient: 'glycerin', from_percent: 4, to_percent: 4, change: 'same' },
      { ingredient: 'sorbitol', from_percent: null, to_percent: 6, change: 'added' },
      { ingredient: 'aqua', from_percent: 91, to_percent: 90, change: 'dose' },
      { ingredient: 'urea', from_percent: 5, to_percent: null, change: 'removed' },
    ])
  })
  test('a recipe beside itself shows no change', () => {
    expect(new Set(compareLines(before, before).map(({ change }) => change))).toEqual(new Set(['same']))
  })
})

const finding = (rule: string, message: string): Finding => ({
  rule,
  severity: 'warn',
  about: ['glycerin'],
  message,
  because: [],
  sources: [],
})

test('findings are told apart by what they say: new ones, those gone, and how many stay', () => {
  const [one, two, three] = [finding('a', 'one'), finding('a', 'two'), finding('b', 'three')]
  expect(compareFindings([one, two], [two, three])).toEqual({ gained: [three], lost: [one], kept: 1 })
})

describe('cost of a kilogram', () => {
  test('counts what has a price and says how many lines have none', () => {
    expect(costOf(after, { glycerin: 10, sorbitol: 5 })).toEqual({ cost_per_kg: 0.7, priced: 2, unpriced: 1 })
  })
  test('an ingredient without a price is not free', () => {
    expect(costOf(after, {})).toEqual({ cost_per_kg: 0, priced: 0, unpriced: 3 })
  })
})

describe('what moved weights do to the order', () => {
  const label = (id: string) => id.toUpperCase()
  test('is said for what changed its place', () => {
    expect(orderWords(['a', 'b', 'c'], ['b', 'a', 'c'], label)).toBe(
      'With these weights the order changes: B from 2 to 1; A from 1 to 2.',
    )
  })
  test('is said when nothing changed', () => {
    expect(orderWords(['a', 'b'], ['a', 'b'], label)).toBe('With these weights the order stays as it was.')
  })
  test('names what comes in anew', () => {
    expect(orderWords(['a'], ['b+c', 'a'], label)).toContain('B + C is 1 now')
  })
})
