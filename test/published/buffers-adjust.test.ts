import { describe, expect, test } from 'vitest'
import { adjustCases } from '../reference/ph/cases.ts'
import { IN_WORDS, judge } from '../reference/ph/judge.ts'

// test/reference/ph/adjust-cases.json: worked cases of dose, dilution, capacity, temperature and solubility, each with
// its source and tolerance. Compared are the figures with activities (extended Debye-Hückel) or the measured range.

describe.each(adjustCases().filter(({ topic }) => !IN_WORDS.includes(topic)))('$id $topic: $title', (one) => {
  const figures = judge(one)
  test.each(figures.filter(({ flagged }) => flagged === undefined))(
    '$what is $expected',
    ({ expected, got, within }) => {
      expect(Math.abs(got - expected)).toBeLessThanOrEqual(within)
    },
  )
  test.fails.each(figures.filter(({ flagged }) => flagged !== undefined))('$what is $expected ($flagged)', (row) => {
    expect(Math.abs(row.got - row.expected)).toBeLessThanOrEqual(row.within)
  })
})

test('every case is judged or a rule in words', () => {
  const rules = adjustCases().filter(({ topic }) => IN_WORDS.includes(topic))
  expect(rules.map(({ id }) => id)).toEqual(['adj-109', 'adj-110'])
})
