import { describe, expect, test } from 'vitest'
import { adjustPh } from '#engine/index.ts'
import { doseTo, withAdditive } from '#engine/chemistry/ph/dose-to.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import { additiveOf } from '#engine/knowledge/acids.ts'
import type { AdjustAsked } from '#engine/ph/adjust-types.ts'
import { mixtureOf } from '../../reference/ph/cases.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const WASH = makeFormula(
  { 'decyl-glucoside': 15, 'cocamidopropyl-betaine': 15, glycerin: 3 },
  { product: 'rinse-off', ph: null },
)
const TONER = makeFormula({ glycerin: 3, 'sodium-benzoate': 0.5, 'sodium-lactate': 1 }, { ph: null })
const adjust = (asked: Partial<AdjustAsked>) =>
  adjustPh(world, { formula: TONER, batch_g: 500, target_ph: 4.5, ...asked })
const ways = (asked: Partial<AdjustAsked>) => {
  const [composition, measured] = adjust(asked).ways
  return { composition: composition!, measured: measured! }
}

describe('a toner whose lines are all known', () => {
  const { composition } = ways({})
  test('gets a dose from its lines, and that dose leads there', () => {
    expect(composition.verdict).toBe('known')
    const { dose_g, likely_g } = composition
    expect(dose_g!.min).toBeLessThan(likely_g!)
    expect(dose_g!.max).toBeGreaterThan(likely_g!)
    // by hand: 0.5 % benzoate and 0.6 % lactate (60 % solution) in 96.4 % water, and the acid of the reply
    const reply = adjust({})
    const compound = world.knowledge.acids.byIngredient.get(reply.with!.ingredient)!
    const water = 0.96395
    const added = likely_g! / compound.molar_mass! / 0.5 / water
    const product = mixtureOf({
      systems: { 'sodium benzoate': 5 / 144.1 / water, 'sodium lactate': 6 / 112.06 / water },
      ions: [],
      temp_c: 25,
    })
    expect(solvePh(withAdditive(product, additiveOf(compound, 25), added)).ph).toBeCloseTo(4.5, 1)
  })
  test('doses in steps of which none is larger than the one before and which do not pass the dose', () => {
    const grams = composition.steps.map(({ add_g }) => add_g)
    expect(grams.length).toBeGreaterThan(1)
    grams.slice(1).forEach((add_g, n) => expect(add_g).toBeLessThanOrEqual(grams[n]!))
    expect(grams.reduce((sum, add_g) => sum + add_g, 0)).toBeLessThanOrEqual(composition.likely_g!)
  })
  test('doses in proportion to the batch and the strength', () => {
    const twice = ways({ batch_g: 1000 }).composition.likely_g!
    expect(twice / composition.likely_g!).toBeCloseTo(2, 2)
    const half = ways({ with: 'citric-acid', strength_percent: 50 }).composition.likely_g!
    expect(half / ways({ with: 'citric-acid' }).composition.likely_g!).toBeCloseTo(2, 2)
  })
  test('tells what a dilution reads when it is there', () => {
    const { dilutionTest } = adjust({})
    expect(dilutionTest!.product_percent).toBe(10)
    expect(dilutionTest!.ph).toBe(4.5)
    expect(Math.abs(dilutionTest!.ph_diluted - 4.5)).toBeLessThan(0.3)
  })
  test('asked for a pH where benzoate does nothing hears who objects', () => {
    const { window } = adjust({ target_ph: 6.5 })
    expect(window.verdict).toBe('outside')
    expect(window.objections.map(({ ingredient }) => ingredient)).toContain('sodium-benzoate')
  })
})

// Worked cases adj-067 and adj-037 of test/reference/ph/adjust-cases.json: tolerance 4 % and 3 % of the dose.
test('a preservative salt and an acid product get the doses of the worked cases', () => {
  const dose = (shares: Record<string, number>, rest: Partial<AdjustAsked>) =>
    ways({ formula: makeFormula(shares, { ph: null }), batch_g: 1000, ...rest }).composition.likely_g! / 10
  const salt = dose({ 'sodium-benzoate': 0.5 }, { target_ph: 5, with: 'citric-acid' })
  expect(Math.abs(salt / 0.043 - 1)).toBeLessThan(0.04)
  // 1 % of pure lactic acid, from a bottle of 80 %
  const lines = [
    { ingredient: 'aqua', fills: true as const },
    { ingredient: 'lactic-acid', share_percent: 1.25, strength_percent: 80 },
  ]
  const formula = { ...makeFormula({}, { ph: null }), lines }
  const lye = ways({ formula, batch_g: 1000, target_ph: 4, with: 'sodium-hydroxide', strength_percent: 10 }).composition
  expect(Math.abs(lye.likely_g! / 28.1 - 1)).toBeLessThan(0.03)
})

// Bench note without a source: 0.25 % citric acid took a wash of glucosides and betaine from about pH 7 to about 5.
describe('a wash of glucoside and betaine from pH 7 to 5', () => {
  const asked = { formula: WASH, batch_g: 200, target_ph: 5, with: 'citric-acid', measured: [{ added_g: 0, ph: 7 }] }
  const { composition, measured } = ways(asked)
  const percent = (grams: number) => (grams / 200) * 100

  test('gets a range from bench practice that holds the quarter of a per cent', () => {
    expect(composition.verdict).toBe('range')
    expect(percent(composition.dose_g!.min)).toBeGreaterThan(0.05)
    expect(percent(composition.dose_g!.min)).toBeLessThan(0.25)
    expect(percent(composition.dose_g!.max)).toBeGreaterThan(0.25)
    expect(percent(composition.dose_g!.max)).toBeLessThan(1)
    expect(composition.uncertainty).toMatch(/common practice/)
  })
  test('names the glucoside as what is not known', () => {
    expect(composition.unknown.map(({ ingredient }) => ingredient)).toEqual(['decyl-glucoside'])
    expect(adjust(asked).warnings.join(' ')).toMatch(/Decyl glucoside: comes at pH 11.5 to 12.5/)
  })
  test('asks for a second reading after a small step', () => {
    expect(measured.verdict).toBe('not-known')
    expect(measured.dose_g).toBeNull()
    expect(measured.steps).toHaveLength(1)
    expect(measured.steps[0]!.add_g).toBeLessThan(composition.dose_g!.min)
  })
  test('without any reading is not known, and proposes nothing', () => {
    const reply = adjust({ formula: WASH, target_ph: 5 })
    expect(reply.start).toBeNull()
    expect(reply.with).toBeNull()
    expect(reply.ways.map(({ verdict, dose_g }) => [verdict, dose_g])).toEqual([
      ['not-known', null],
      ['not-known', null],
    ])
    expect(reply.dilutionTest).toBeNull()
  })
  test('with readings in the middle of the practice range lands on the practice dose', () => {
    // 12 mmol of equivalents per kg and pH is 0.125 g of citric acid per 100 g and pH, more or less
    const read = [0, 0.12, 0.24].map((added_g, n) => ({ added_g, ph: 7 - n * 0.5 }))
    const way = ways({ ...asked, measured: read }).measured
    expect(way.dose_g!.min).toBeLessThan(0.5)
    expect(way.dose_g!.max).toBeGreaterThan(0.5)
    expect(way.likely_g).toBeGreaterThan(0.4)
    expect(way.likely_g).toBeLessThan(0.7)
  })
})

describe('measured twice', () => {
  const batch_g = 1000
  /** Alkaline water of 10 mmol/kg as a person would meet it: nothing in the formula says so. */
  const BLIND = makeFormula({ glycerin: 1 }, { ph: null })
  const water = 0.99
  const product = mixtureOf({ systems: {}, ions: [[1, 0.01]], temp_c: 25 })
  const citric = additiveOf(world.knowledge.acids.byIngredient.get('citric-acid')!, 25)
  const read = (grams: number[]) =>
    grams.map((added_g) => ({ added_g, ph: solvePh(withAdditive(product, citric, added_g / 192.123 / water)).ph }))
  const asked = { formula: BLIND, batch_g, target_ph: 5.5, with: 'citric-acid' }
  const exact_g = doseTo(product, citric, 5.5)! * 192.123 * water

  test('sees through a plateau: the straight line would go six times too far', () => {
    const { measured } = ways({ ...asked, measured: read([0, 0.38]) })
    const line = measured.because.find(({ fact }) => fact.startsWith('a straight line'))
    expect(Number(/ask for ([\d.]+) g/.exec(line!.fact)![1])).toBeGreaterThan(exact_g * 5)
    expect(measured.likely_g! / exact_g).toBeCloseTo(1, 1)
    expect(measured.dose_g!.min).toBeLessThanOrEqual(exact_g)
    expect(measured.dose_g!.max).toBeGreaterThanOrEqual(exact_g)
  })
  test('plans steps no larger than the last one and short of the target', () => {
    const { measured } = ways({ ...asked, measured: read([0, 0.2]) })
    const grams = measured.steps.map(({ add_g }) => add_g)
    expect(grams[0]).toBeLessThanOrEqual(0.2)
    expect(0.2 + grams.reduce((sum, add_g) => sum + add_g, 0)).toBeLessThanOrEqual(exact_g)
  })
  test('warns of the straight line and says how far a reading may be off', () => {
    const reply = adjust({ ...asked, measured: read([0, 0.38]) })
    expect(reply.warnings.join(' ')).toMatch(/straight line .* overshoots/)
    expect(reply.reading).toEqual({ meter: 'meter', error_ph: 0.05, temp_c: 25, diluted_percent: null })
  })
  test('readings nearer than their errors are told to say little', () => {
    const said = (ph: number) => {
      const measured = [
        { added_g: 0, ph: 7 },
        { added_g: 0.1, ph },
      ]
      return ways({ ...asked, measured }).measured.uncertainty
    }
    expect(said(6.92)).toMatch(/^The last two readings lie no further apart than their errors/)
    expect(said(6.5)).toMatch(/^Each reading counted as ±0.05/)
  })
  test('with strips is less sure than with a meter', () => {
    const width = (meter: 'meter' | 'strips') => {
      const { dose_g } = ways({ ...asked, meter, measured: read([0, 0.38, 0.7]) }).measured
      return dose_g!.max - dose_g!.min
    }
    expect(width('strips')).toBeGreaterThan(width('meter') * 2)
  })
  test('stops where the last reading is on the target', () => {
    const { measured } = ways({
      ...asked,
      measured: [
        { added_g: 0, ph: 7 },
        { added_g: 0.1, ph: 5.52 },
      ],
    })
    expect(measured).toMatchObject({ verdict: 'known', dose_g: { min: 0.1, max: 0.1 }, steps: [] })
  })
  test('of grams that nobody named is not known', () => {
    const { with: _, ...unnamed } = asked
    const { measured } = ways({ ...unnamed, measured: read([0, 0.38]) })
    expect(measured.verdict).toBe('not-known')
    expect(measured.unknown[0]!.says).toMatch(/^with: /)
  })
  test('uses what the formula says: a named buffer narrows the range', () => {
    const lactate = makeFormula({ glycerin: 1, 'sodium-lactate': 5 }, { ph: null })
    const mixture = mixtureOf({ systems: { 'sodium lactate': 30 / 112.06 / 0.966 }, ions: [], temp_c: 25 })
    const measured = [0, 2].map((added_g) => ({
      added_g,
      ph: solvePh(withAdditive(mixture, citric, added_g / 192.123 / 0.966)).ph,
    }))
    const asks = { ...asked, target_ph: 4, measured }
    const named = ways({ ...asks, formula: lactate }).measured.dose_g!
    const blind = ways({ ...asks, formula: BLIND }).measured.dose_g!
    expect(named.max - named.min).toBeLessThan((blind.max - blind.min) / 2)
  })
})

describe('what goes in', () => {
  test('is proposed the way the pH has to go, from the lines where one is there', () => {
    expect(adjust({}).with).toMatchObject({
      ingredient: 'citric-acid',
      kind: 'acid',
      proposed: true,
      strength_percent: 100,
    })
    const acidic = makeFormula({ 'lactic-acid': 1 }, { ph: null })
    expect(adjust({ formula: acidic, target_ph: 2.2 }).with!.ingredient).toBe('lactic-acid')
    expect(adjust({ formula: acidic, target_ph: 4.5 }).with!.kind).toBe('base')
  })
  test('is not proposed against a clash that a record names', () => {
    const yellowing = makeFormula({ 'dehydroacetic-acid': 0.3, 'lactic-acid': 1 }, { ph: null })
    expect(adjust({ formula: yellowing, target_ph: 5 }).with!.ingredient).not.toBe('arginine')
  })
  test.each([
    ['sodium-hydroxide', /^with: from pH 7 to 5 an acid is needed; Sodium hydroxide raises the pH$/],
    ['glycerin', /^with: glycerin is no acid or base with a known constant/],
    ['sodium-chloride', /^with: sodium-chloride is no acid or base/],
  ])('%s for an acid is refused by name', (id, says) => {
    const asked = { formula: WASH, target_ph: 5, with: id, measured: [{ added_g: 0, ph: 7 }] }
    expect(() => adjust(asked)).toThrow(RangeError)
    expect(() => adjust(asked)).toThrow(says)
  })
  test('an overshoot asks for the other one', () => {
    const past = [
      { added_g: 0, ph: 7 },
      { added_g: 1, ph: 4 },
    ]
    expect(() => adjust({ formula: WASH, target_ph: 5, with: 'citric-acid', measured: past })).toThrow(
      /^with: from pH 4 to 5 a base is needed/,
    )
  })
  test('the pH stated with the formula is the start where nothing was read', () => {
    expect(adjust({ formula: { ...WASH, ph: 7 }, target_ph: 5 }).start).toEqual({ ph: 7, from: 'formula' })
    expect(() => adjust({ formula: { ...WASH, ph: 7 }, target_ph: 5, with: 'arginine' })).toThrow(/an acid is needed/)
    expect(adjust({ formula: { ...TONER, ph: 4.5 } }).start!.from).toBe('composition')
  })
})

describe('readings that cannot be', () => {
  test.each([
    [[{ added_g: 0.5, ph: 7 }], /^measured\/0\/added_g: expected 0/],
    [
      [
        { added_g: 0, ph: 7 },
        { added_g: 0, ph: 6 },
      ],
      /^measured\/1\/added_g: expected more than 0/,
    ],
    [
      [
        { added_g: 0, ph: 7 },
        { added_g: 1, ph: 7.5 },
      ],
      /^measured\/1\/ph: expected at most 7, as Citric acid lowers the pH; got 7.5/,
    ],
  ])('%j is refused by field', (measured, says) => {
    expect(() => adjust({ formula: WASH, target_ph: 5, with: 'citric-acid', measured })).toThrow(says)
  })
})
