import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { creamingRate, reynoldsOfDroplet } from '#engine/chemistry/creaming-rate.ts'

// Worked by hand: (2e-6)² × 80 × 9.80665 / (18 × 1e-3) m/s is 174.3 nm/s, 15.06 mm a day.
test('an oil droplet of 2 µm in water rises 15 mm a day', () => expect(creamingRate(2, 80, 1)).toBeCloseTo(15.063, 3))

describe('the speed', () => {
  const droplets = fc.double({ min: 0.1, max: 100, noNaN: true })
  // A dairy teaching page: a globule of 2 µm rises four times as fast as one of 1 µm.
  test('goes with the square of the diameter', () =>
    fc.assert(
      fc.property(droplets, (d) => {
        expect(creamingRate(2 * d, 50, 10) / creamingRate(d, 50, 10)).toBeCloseTo(4, 9)
      }),
    ))
  test('halves in twice the viscosity', () =>
    expect(creamingRate(5, 50, 20) * 2).toBeCloseTo(creamingRate(5, 50, 10), 12))
  test('turns round with the density', () => expect(creamingRate(5, -50, 10)).toBe(-creamingRate(5, 50, 10)))
  test('is nothing without a gap', () => expect(creamingRate(5, 0, 10)).toBe(0))
})

test('what is out of range is named', () => {
  expect(() => creamingRate(0, 50, 1)).toThrow(/^droplet_um/)
  expect(() => creamingRate(5, Number.NaN, 1)).toThrow(/^density_gap_kg_per_m3/)
  expect(() => creamingRate(5, 50, 0)).toThrow(/^viscosity_mpa_s/)
})

test('fast flow is seen by its Reynolds number', () => {
  expect(reynoldsOfDroplet(1, creamingRate(1, 80, 1), 1)).toBeLessThan(1e-6)
  expect(reynoldsOfDroplet(1000, creamingRate(1000, 80, 1), 1)).toBeGreaterThan(0.1)
})
