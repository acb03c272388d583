import fc from 'fast-check'
import { expect, test } from 'vitest'
import { crossing, fixedPoint } from '#engine/chemistry/ph/find-root.ts'

test('a falling function is crossed where it is zero, however steep its ends', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1, max: 15, noNaN: true }),
      fc.double({ min: 0.1, max: 3, noNaN: true }),
      (root, steep) => {
        const found = crossing(
          (x) => ({
            value: 10 ** (steep * (root - x)) - 10 ** (steep * (x - root)),
            slope: -steep * Math.LN10 * (10 ** (steep * (root - x)) + 10 ** (steep * (x - root))),
          }),
          [-2, 16],
          { within: 1e-12 },
        )
        expect(found).toBeCloseTo(root, 9)
      },
    ),
  )
})

test('a start beside the root changes nothing', () => {
  const falling = (x: number) => ({ value: 3 - x, slope: -1 })
  expect(crossing(falling, [0, 10], { within: 1e-12, start: 9 })).toBeCloseTo(3, 12)
})

test('a value that a function gives back is found, also where plain repetition runs away', () => {
  expect(fixedPoint(Math.cos, [0, 1], 1e-12)).toBeCloseTo(0.739085133215, 9)
  expect(fixedPoint((x) => 10 - 3 * x, [0, 10], 1e-12)).toBeCloseTo(2.5, 9)
})
