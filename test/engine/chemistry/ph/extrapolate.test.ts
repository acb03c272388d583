import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { doseTo, withAdditive } from '#engine/chemistry/ph/dose-to.ts'
import type { Additive } from '#engine/chemistry/ph/dose-to.ts'
import { contradicts, extrapolate } from '#engine/chemistry/ph/extrapolate.ts'
import { hiddenCharge } from '#engine/chemistry/ph/hidden-charge.ts'
import type { Reading } from '#engine/chemistry/ph/hidden-charge.ts'
import type { Mixture } from '#engine/chemistry/ph/mixture.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'

const CITRIC: Additive = { systems: [{ charge: 0, pkas: [3.127, 4.759, 6.397], mol_per_l: 1 }], ions: [] }
const LACTIC: Additive = { systems: [{ charge: 0, pkas: [3.86], mol_per_l: 1 }], ions: [] }
const HCL: Additive = { systems: [], ions: [{ charge: -1, mol_per_l: 1 }] }
const LYE: Additive = { systems: [], ions: [{ charge: 1, mol_per_l: 1 }] }
const NOTHING: Mixture = { systems: [], ions: [], temp_c: 25 }
const METER = 0.05

const alkali = (mol_per_l: number): Mixture => ({ systems: [], ions: [{ charge: 1, mol_per_l }], temp_c: 25 })
const read = (product: Mixture, additive: Additive, doses: number[]): Reading[] =>
  doses.map((added_mol_per_l) => ({
    added_mol_per_l,
    ph: solvePh(withAdditive(product, additive, added_mol_per_l)).ph,
  }))

/** A product with up to three buffers that nobody named, at a pH between 6.5 and 11.5. */
const product = fc
  .record({
    systems: fc.array(
      fc.record({
        charge: fc.constant(0),
        pkas: fc.tuple(fc.double({ min: 3, max: 11, noNaN: true })),
        mol_per_l: fc.double({ min: 1e-4, max: 0.03, noNaN: true }),
      }),
      { maxLength: 3 },
    ),
    start: fc.double({ min: 6.5, max: 11.5, noNaN: true }),
  })
  .map(({ systems, start }) => {
    const bare = { systems, ions: [], temp_c: 25 }
    const lye = doseTo(bare, LYE, start) ?? 0
    return { ...bare, ions: [{ charge: 1, mol_per_l: lye }] }
  })

describe('readings of a product of which nothing is known', () => {
  test('never make the least dose larger than the true one, errors of the meter included', () => {
    fc.assert(
      fc.property(
        product,
        fc.constantFrom(CITRIC, LACTIC, HCL),
        fc.record({
          target_ph: fc.double({ min: 4, max: 5.5, noNaN: true }),
          part: fc.double({ min: 0.02, max: 0.6, noNaN: true }),
        }),
        fc.array(fc.double({ min: -METER, max: METER, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (mixed, additive, { target_ph, part }, errors) => {
          const exact = doseTo(mixed, additive, target_ph)
          fc.pre(exact !== null && exact > 1e-5)
          const readings = read(mixed, additive, [0, (exact! * part) / 2, exact! * part]).map((one, n) => ({
            ...one,
            ph: one.ph + (errors[n] ?? 0),
          }))
          const found = extrapolate({ known: NOTHING, additive, readings, target_ph, error_ph: METER })
          expect(found).not.toBeNull()
          expect(found!.min).toBeLessThanOrEqual(exact! * (1 + 1e-9))
          expect(found!.min).toBeGreaterThanOrEqual(readings.at(-1)!.added_mol_per_l)
          expect(found!.max).toBeGreaterThanOrEqual(found!.likely)
          expect(found!.likely).toBeGreaterThanOrEqual(found!.min)
        },
      ),
      { numRuns: 400 },
    )
  })

  test('made with a base towards a higher pH hold the same way', () => {
    fc.assert(
      fc.property(product, fc.double({ min: 0.05, max: 0.6, noNaN: true }), (mixed, part) => {
        const acid = { ...mixed, ions: [{ charge: -1, mol_per_l: 0.005 }] }
        const exact = doseTo(acid, LYE, 6)
        fc.pre(exact !== null && exact > 1e-5)
        const readings = read(acid, LYE, [0, exact! * part])
        const found = extrapolate({ known: NOTHING, additive: LYE, readings, target_ph: 6, error_ph: METER })
        expect(found!.min).toBeLessThanOrEqual(exact! * (1 + 1e-9))
      }),
    )
  })
})

// Worked case: 10 mmol/kg of lye, 2 mmol of citric acid tried, target 5.5. A straight line asks for 31.6 mmol, which
// lands at pH 2.8; 4.8 are needed (test/reference/ph/adjust-cases.json, adj-086).
test('strong alkali is seen through: what the acid took was lye, not a buffer', () => {
  const product = alkali(0.01)
  const found = extrapolate({
    known: NOTHING,
    additive: CITRIC,
    readings: read(product, CITRIC, [0, 0.002]),
    target_ph: 5.5,
    error_ph: METER,
  })
  expect(found!.likely * 1000).toBeCloseTo(4.8, 1)
  expect(found!.min * 1000).toBeGreaterThan(4.4)
  expect(found!.plan).toBeLessThan(doseTo(product, CITRIC, 5.5)!)
})

test('a buffer that is named is worked out: the range closes around the true dose', () => {
  const citrate = { charge: 0, pkas: [3.127, 4.759, 6.397], mol_per_l: 0.05 }
  const product = { systems: [citrate], ions: [{ charge: 1, mol_per_l: 0.13 }], temp_c: 25 }
  const readings = read(product, HCL, [0, 0.01])
  const exact = doseTo(product, HCL, 5)!
  const blind = extrapolate({ known: NOTHING, additive: HCL, readings, target_ph: 5, error_ph: METER })!
  const named = extrapolate({
    known: { ...NOTHING, systems: [citrate] },
    additive: HCL,
    readings,
    target_ph: 5,
    error_ph: METER,
  })!
  expect(named.min).toBeGreaterThan(exact * 0.9)
  expect(named.max - named.min).toBeLessThan((blind.max - blind.min) / 2)
})

test('more in the recipe than the readings show is a contradiction', () => {
  const citrate = { charge: 0, pkas: [3.127, 4.759, 6.397], mol_per_l: 0.1 }
  const readings = read(alkali(1e-4), HCL, [0, 5e-5])
  const titration = { additive: HCL, readings, target_ph: 5, error_ph: METER }
  expect(contradicts({ ...titration, known: { ...NOTHING, systems: [citrate] } })).toBe(true)
  expect(contradicts({ ...titration, known: NOTHING })).toBe(false)
})

test('one reading says nothing', () => {
  const readings = read(alkali(0.01), CITRIC, [0])
  expect(extrapolate({ known: NOTHING, additive: CITRIC, readings, target_ph: 5.5, error_ph: METER })).toBeNull()
})

describe('step by step on made-up products', () => {
  /** Doses and reads like a person who follows the plan; a step is never larger than the one before. */
  function followed(mixed: Mixture, additive: Additive, target_ph: number, exact: number, part: number): number {
    const phAt = (dose: number): number => Math.round(solvePh(withAdditive(mixed, additive, dose)).ph * 100) / 100
    let added = exact * part
    let step = added
    const readings = [
      { added_mol_per_l: 0, ph: phAt(0) },
      { added_mol_per_l: added, ph: phAt(added) },
    ]
    for (let n = 0; n < 40 && readings.at(-1)!.ph - target_ph > 0.1; n++) {
      const found = extrapolate({ known: NOTHING, additive, readings, target_ph, error_ph: METER })
      if (!found) break
      const feeling = Math.min(step / 3, (found.likely - added) / 4)
      step = Math.max(Math.min(step, Math.max(found.plan - added, feeling)), exact / 1000)
      added += step
      readings.push({ added_mol_per_l: added, ph: phAt(added) })
    }
    return solvePh(withAdditive(mixed, additive, added)).ph
  }
  const cases = fc.sample(
    fc.record({
      mixed: product,
      additive: fc.constantFrom(CITRIC, LACTIC, HCL),
      target_ph: fc.double({ min: 4, max: 5.5, noNaN: true }),
      part: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
    }),
    { numRuns: 200, seed: 7 },
  )
  const doses = cases.flatMap((one) => {
    const exact = doseTo(one.mixed, one.additive, one.target_ph)
    return exact === null || exact < 1e-5 ? [] : [{ ...one, exact }]
  })

  test('hardly one in fifty is driven past the target', () => {
    const past = doses.filter(
      (one) => followed(one.mixed, one.additive, one.target_ph, one.exact, one.part) < one.target_ph - 0.1,
    )
    expect(doses.length).toBeGreaterThan(150)
    expect(past.length / doses.length).toBeLessThan(0.02)
  })
  test('the largest dose of two readings covers about nine of ten', () => {
    const covered = doses.filter(({ mixed, additive, target_ph, exact, part }) => {
      const readings = read(mixed, additive, [0, exact * part])
      return extrapolate({ known: NOTHING, additive, readings, target_ph, error_ph: METER })!.max >= exact * 0.999
    })
    expect(covered.length / doses.length).toBeGreaterThan(0.85)
  })
})

test('the hidden charge of water and lye is the lye', () => {
  const [first] = read(alkali(0.01), CITRIC, [0])
  expect(hiddenCharge(NOTHING, CITRIC, first!)).toBeCloseTo(0.01, 9)
})
