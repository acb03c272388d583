import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decimalReductionTime, logReduction } from '#engine/chemistry/microbial-counts.ts'

const counts = fc.double({ min: 1, max: 1e9, noNaN: true })

describe('log reduction', () => {
  test('counts powers of ten', () => expect(logReduction(1e6, 1e3)).toBeCloseTo(3, 12))
  test('is negative where germs grow', () => expect(logReduction(100, 1000)).toBeCloseTo(-1, 12))
  test('adds up over a count between', () =>
    fc.assert(
      fc.property(counts, counts, counts, (a, b, c) => {
        expect(logReduction(a, b) + logReduction(b, c)).toBeCloseTo(logReduction(a, c), 9)
      }),
    ))
  test('of nothing found is at least down to the detection limit', () =>
    expect(logReduction(1e6, 0, 10)).toBeCloseTo(5, 12))
  test('takes a count above the detection limit as it is', () => expect(logReduction(1e6, 100, 10)).toBeCloseTo(4, 12))
  test('of nothing found without a detection limit is not told', () =>
    expect(() => logReduction(1e6, 0)).toThrow(/^end_cfu_per_g: 0 has no logarithm/))
  test('a detection limit above the start tells nothing', () =>
    expect(() => logReduction(100, 0, 1000)).toThrow(/^detection_limit_cfu_per_g/))
})

describe('D-value', () => {
  // adams-moss-p67, equation 4.5: D = (t2 − t1) / (log N1 − log N2).
  test('is the hours a power of ten', () => expect(decimalReductionTime(1e6, 1e3, 12)).toBeCloseTo(4, 12))
  test('after one D-value a tenth is left', () =>
    fc.assert(
      fc.property(counts, fc.double({ min: 0.1, max: 1000, noNaN: true }), (start, hours) => {
        expect(decimalReductionTime(start, start / 10, hours)).toBeCloseTo(hours, 6)
      }),
    ))
  test('needs a fall', () => {
    expect(() => decimalReductionTime(1e3, 1e3, 1)).toThrow(/^end_cfu_per_g: expected less than the start/)
    expect(() => decimalReductionTime(1e3, 0, 1)).toThrow(/^end_cfu_per_g/)
    expect(() => decimalReductionTime(1e3, 10, 0)).toThrow(/^hours/)
  })
})
