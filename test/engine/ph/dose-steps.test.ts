import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stepDown } from '#engine/ph/amounts.ts'
import { stepsTo, trialOf, trialStep } from '#engine/ph/dose-steps.ts'
import { straightLine } from '#engine/ph/readings.ts'
import { english } from '#engine/words/say.ts'

const OF = { of: 'acid', say: english }
const grams = fc.double({ min: 1e-6, max: 1e5, noNaN: true })

describe('steps towards an amount', () => {
  test('never pass it, and none is larger than the one before or than the first allowed', () => {
    fc.assert(
      fc.property(grams, grams, (amount, first) => {
        const all = stepsTo(amount, first, OF).map(({ add_g }) => add_g)
        expect(all.reduce((sum, add_g) => sum + add_g, 0)).toBeLessThanOrEqual(amount * (1 + 1e-9))
        let last = first * (1 + 1e-9)
        for (const add_g of all) {
          expect(add_g).toBeGreaterThan(0)
          expect(add_g).toBeLessThanOrEqual(last)
          last = add_g
        }
      }),
    )
  })
  test('of nothing are none', () => expect(stepsTo(0, 1, OF)).toEqual([]))
  test('stop after five', () => expect(stepsTo(100, 1, OF)).toHaveLength(5))
})

test('a step is rounded down, so that it never adds more than was worked out', () => {
  expect(stepDown(0.12345)).toBe(0.123)
  expect(stepDown(98.76)).toBe(98.7)
  expect(stepDown(0)).toBe(0)
  fc.assert(fc.property(grams, (one) => void expect(stepDown(one)).toBeLessThanOrEqual(one * (1 + 1e-9))))
})

test('a first step is about a drop of a 10 % solution in 100 g', () => {
  expect(trialOf(100, 10)).toBeCloseTo(0.05, 6)
  expect(trialStep(0.05, 'acid', english)).toMatchObject([{ add_g: 0.05, of: 'acid' }])
})

// Arithmetic of the bench: 2 mmol took 11.95 to 11.54; to 5.5 the line asks for 31.5 (adj-086 of the worked cases).
test('the straight line of the bench is dose times way to go over way gone', () => {
  expect(
    straightLine(
      [
        { added_g: 0, ph: 11.95 },
        { added_g: 2, ph: 11.54 },
      ],
      5.5,
    ),
  ).toBeCloseTo(31.46, 1)
  expect(straightLine([{ added_g: 0, ph: 7 }], 5)).toBeNull()
  expect(
    straightLine(
      [
        { added_g: 0, ph: 7 },
        { added_g: 1, ph: 7 },
      ],
      5,
    ),
  ).toBeNull()
})
