import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distanceOutside, gap, inside, middle, overlap, rangeText } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import { mustBeIn } from '#engine/units/must-be-in.ts'
import { roundTo, short } from '#engine/units/round.ts'

const end = fc.double({ min: -20, max: 20, noNaN: true })
const ranges: fc.Arbitrary<Range> = fc
  .tuple(end, end, fc.boolean(), fc.boolean())
  .map(([a, b, low, high]) => ({ ...(low && { min: Math.min(a, b) }), ...(high && { max: Math.max(a, b) }) }))

describe('a range', () => {
  test('holds its own ends', () => {
    expect([inside(3, { min: 3, max: 5 }), inside(5, { min: 3, max: 5 })]).toEqual([true, true])
    expect([inside(2.999, { min: 3 }), inside(5.001, { max: 5 })]).toEqual([false, false])
  })

  test('without ends holds everything', () => fc.assert(fc.property(end, (x) => inside(x, {}))))

  test('is left exactly when the distance outside is above nothing', () =>
    fc.assert(fc.property(end, ranges, (x, r) => distanceOutside(x, r) > 0 !== inside(x, r))))

  test('tells the distance to the nearer end', () => {
    expect(distanceOutside(2, { min: 3, max: 5 })).toBe(1)
    expect(distanceOutside(7, { min: 3, max: 5 })).toBe(2)
  })

  test('has its middle between its ends; an open end counts as the other', () => {
    expect([middle({ min: 3, max: 5 }), middle({ min: 3 }), middle({ max: 5 }), middle({})]).toEqual([
      4,
      3,
      5,
      undefined,
    ])
  })

  test.each([
    [{ min: 3, max: 5 }, '3 to 5'],
    [{ max: 5 }, 'at most 5'],
    [{ min: 3 }, 'from 3'],
    [{ min: 4, max: 4 }, '4'],
  ])('%o reads %s', (range, text) => expect(rangeText(range)).toBe(text))
})

describe('the common part of two ranges', () => {
  test('is the same either way round', () =>
    fc.assert(fc.property(ranges, ranges, (a, b) => void expect(overlap(a, b)).toEqual(overlap(b, a)))))

  test('holds exactly what both hold', () =>
    fc.assert(
      fc.property(ranges, ranges, end, (a, b, x) => {
        const both = overlap(a, b)
        expect(both !== null && inside(x, both)).toBe(inside(x, a) && inside(x, b))
      }),
    ))

  test('of a range with itself is the range', () =>
    fc.assert(fc.property(ranges, (a) => void expect(overlap(a, a)).toEqual(a))))

  test('of touching ranges is the point where they touch', () =>
    expect(overlap({ min: 3, max: 5 }, { min: 5, max: 7 })).toEqual({ min: 5, max: 5 }))

  test('is missing exactly where a gap lies between', () =>
    fc.assert(fc.property(ranges, ranges, (a, b) => (overlap(a, b) === null) === gap(a, b) > 0)))
})

describe('rounding', () => {
  test.each([
    [1.005, 2, 1.01],
    [0.12345, 4, 0.1235],
    [99.99996, 4, 100],
    [7, 0, 7],
  ])('%d to %d decimals is %d', (value, decimals, rounded) => expect(roundTo(value, decimals)).toBe(rounded))

  test('moves a value by half a step at most', () =>
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (x) => Math.abs(roundTo(x, 4) - x) <= 0.0000501),
    ))

  test.each([
    [0.375, '0.375'],
    [12.46, '12.5'],
    [80, '80'],
    [0.0015, '0.0015'],
  ])('%d reads %s', (value, text) => expect(short(value)).toBe(text))
})

test('a number out of bounds is named with its bounds and what came', () => {
  expect(() => mustBeIn('ph', 16, -1, 15)).toThrow(new RangeError('ph: expected -1 to 15, got 16'))
  expect(() => mustBeIn('ph', Number.NaN, -1, 15)).toThrow(RangeError)
  expect(() => mustBeIn('ph', 15, -1, 15)).not.toThrow()
})
