import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apportion } from '#engine/batch/apportion.ts'

test('thirds of a hundred get 34, 33 and 33: the tie goes to the first', () => {
  expect(apportion(100, [1, 1, 1])).toEqual([34, 33, 33])
})

test('the largest remainder gets the unit that is left', () => {
  // Seats by largest remainder for 416, 338 and 246 of 1,000 votes and 10 seats: 4.16, 3.38 and 2.46.
  expect(apportion(10, [416, 338, 246])).toEqual([4, 3, 3])
})

test('shares that are whole are left alone, also where binary fractions are not exact', () => {
  expect(apportion(1000, [0.1, 0.2, 99.7])).toEqual([1, 2, 997])
  expect(apportion(2000, [90.2, 2, 0.8, 5, 1, 0.9, 0.1])).toEqual([1804, 40, 16, 100, 20, 18, 2])
})

test('nothing is handed out of nothing', () => {
  expect(apportion(0, [3, 4])).toEqual([0, 0])
})

test('parts add up, and none is off by a whole unit', () =>
  fc.assert(
    fc.property(
      fc.nat(1e9),
      fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 100 }),
      (units, weights) => {
        const sum = weights.reduce((total, weight) => total + weight, 0)
        fc.pre(sum > 1e-6)
        const parts = apportion(units, weights)
        expect(parts.reduce((total, part) => total + part, 0)).toBe(units)
        parts.forEach((part, at) => expect(Math.abs(part - (units * weights[at]!) / sum)).toBeLessThan(1 + 1e-6))
      },
    ),
  ))

test('a part of a unit, a negative weight and nothing but zeros are refused', () => {
  expect(() => apportion(1.5, [1])).toThrow(RangeError)
  expect(() => apportion(-1, [1])).toThrow(/units/)
  expect(() => apportion(1, [1, -1])).toThrow(/weights/)
  expect(() => apportion(1, [0, 0])).toThrow(/weights/)
  expect(() => apportion(1, [Number.NaN])).toThrow(/weights/)
})
