import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bufferCapacity } from '#engine/chemistry/ph/capacity.ts'
import { diluted } from '#engine/chemistry/ph/dilute.ts'
import { doseTo, wayTo, withAdditive } from '#engine/chemistry/ph/dose-to.ts'
import type { Additive } from '#engine/chemistry/ph/dose-to.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'

const CITRIC: Additive = { systems: [{ charge: 0, pkas: [3.127, 4.759, 6.397], mol_per_l: 1 }], ions: [] }
const LYE: Additive = { systems: [], ions: [{ charge: 1, mol_per_l: 1 }] }

const product = fc.record({
  systems: fc.array(
    fc.record({
      charge: fc.integer({ min: 0, max: 1 }),
      pkas: fc
        .array(fc.double({ min: 2, max: 11, noNaN: true }), { minLength: 1, maxLength: 3 })
        .map((all) => all.sort((a, b) => a - b)),
      mol_per_l: fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
    }),
    { maxLength: 5 },
  ),
  ions: fc.array(
    fc.record({ charge: fc.constantFrom(-1, 1), mol_per_l: fc.double({ min: 0, max: 0.1, noNaN: true }) }),
    { maxLength: 3 },
  ),
  temp_c: fc.constant(25),
})

test('the dose that is worked out brings the mixture to the target', () => {
  fc.assert(
    fc.property(product, fc.double({ min: 3.5, max: 10, noNaN: true }), (mixed, target_ph) => {
      const additive = wayTo(mixed, target_ph) === 'acid' ? CITRIC : LYE
      const dose = doseTo(mixed, additive, target_ph)
      fc.pre(dose !== null && dose > 0)
      expect(solvePh(withAdditive(mixed, additive, dose!)).ph).toBeCloseTo(target_ph, 6)
    }),
    { numRuns: 500 },
  )
})

describe('what cannot be reached has no dose', () => {
  const alkaline = { systems: [], ions: [{ charge: 1, mol_per_l: 0.01 }], temp_c: 25 }
  test('a base does not lower a pH', () => expect(doseTo(alkaline, LYE, 5)).toBeNull())
  test('citric acid never makes pH 0.5', () => expect(doseTo(alkaline, CITRIC, 0.5)).toBeNull())
  test('at the target already, nothing is needed', () => expect(doseTo(alkaline, CITRIC, solvePh(alkaline).ph)).toBe(0))
})

test('ten times thinner, a strong acid rises by one unit and a buffer hardly moves', () => {
  const acid = { systems: [], ions: [{ charge: -1, mol_per_l: 0.001 }], temp_c: 25 }
  expect(solvePh(diluted(acid, 0.1)).ph - solvePh(acid).ph).toBeCloseTo(1, 1)
  const buffer = {
    systems: [{ charge: 0, pkas: [3.86], mol_per_l: 0.1 }],
    ions: [{ charge: 1, mol_per_l: 0.06 }],
    temp_c: 25,
  }
  expect(solvePh(diluted(buffer, 0.1)).ph - solvePh(buffer).ph).toBeLessThan(0.1)
})

test('a one-step buffer holds best at its constant: a quarter of ln 10 times the total', () => {
  const at = (mol_per_l: number) =>
    bufferCapacity({
      systems: [{ charge: 0, pkas: [5], mol_per_l: 0.02, apparent: true }],
      ions: [{ charge: 1, mol_per_l }],
      temp_c: 25,
    })
  expect(at(0.01)).toBeCloseTo((Math.LN10 * 0.02) / 4, 3)
  expect(at(0.01)).toBeGreaterThan(at(0.002))
})
