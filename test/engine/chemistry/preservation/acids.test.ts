import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { acidInEmulsion, undissociatedInEmulsion } from '#engine/chemistry/preservation/acid-in-emulsion.ts'
import { acidSolubility } from '#engine/chemistry/preservation/acid-solubility.ts'
import { acidEffect, inhibition, ionPartOfEffect, levelsAlone } from '#engine/chemistry/preservation/ion-effect.ts'
import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const ph = between(1, 13)
const pka = between(2, 9)
const ROUNDING = 1 + 1e-9
const surroundings = fc.record({
  ph,
  pka,
  partition_ratio: between(0, 300),
  oil_to_water: between(0, 10),
  total_to_free: between(1, 50),
})

describe('the undissociated share', () => {
  test('is one half where pH equals pKa', () => expect(undissociatedShare(4.2, 4.2)).toBe(0.5))

  test('never rises with the pH', () =>
    fc.assert(
      fc.property(ph, pka, between(0, 1), (at, constant, more) => {
        expect(undissociatedShare(at + more, constant)).toBeLessThanOrEqual(undissociatedShare(at, constant))
      }),
    ))

  test('names what is out of range', () =>
    expect(() => undissociatedShare(Number.NaN, 4)).toThrow('ph: expected 0 to 14, got NaN'))
})

describe('an acid in an emulsion', () => {
  test('what goes in for a wanted level gives that level back', () =>
    fc.assert(
      fc.property(between(0.001, 1), surroundings, between(2, 7), (wanted, here, at) => {
        const total = acidInEmulsion(wanted, { ...here, ph: at })
        expect(undissociatedInEmulsion(total, { ...here, ph: at })).toBeCloseTo(wanted, 10)
      }),
    ))

  test('a higher pH never raises the undissociated acid', () =>
    fc.assert(
      fc.property(surroundings, between(0, 1), (here, more) => {
        const before = undissociatedInEmulsion(1, here)
        expect(undissociatedInEmulsion(1, { ...here, ph: here.ph + more })).toBeLessThanOrEqual(before * ROUNDING)
      }),
    ))

  test('it takes more acid where oil and micelles take their part', () =>
    fc.assert(
      fc.property(surroundings, between(0.01, 5), between(0.01, 5), (here, oil, bound) => {
        const plain = acidInEmulsion(0.1, { ph: here.ph, pka: here.pka, partition_ratio: 0, oil_to_water: 0 })
        const more = acidInEmulsion(0.1, {
          ...here,
          partition_ratio: here.partition_ratio + 0.01,
          oil_to_water: oil,
          total_to_free: 1 + bound,
        })
        expect(more).toBeGreaterThan(plain)
      }),
    ))

  test('an acid constant out of range is named', () =>
    expect(() => acidInEmulsion(0.1, { ph: 4, pka: 40, partition_ratio: 1, oil_to_water: 1 })).toThrow('pka: expected'))
})

test('a weak acid dissolves the better the less acid the water is, and never less than its own solubility', () =>
  fc.assert(
    fc.property(between(0.01, 5), ph, pka, between(0, 1), (own, at, constant, more) => {
      const solubility = acidSolubility(own, at, constant)
      expect(solubility).toBeGreaterThanOrEqual(own)
      expect(acidSolubility(own, at + more, constant)).toBeGreaterThanOrEqual(solubility)
    }),
  ))

describe('the effect of acid and ion together', () => {
  test('is that of the undissociated share where the ion does nothing', () =>
    fc.assert(
      fc.property(ph, pka, (at, constant) => {
        expect(acidEffect(at, constant, Infinity)).toBeCloseTo(undissociatedShare(at, constant), 12)
        expect(ionPartOfEffect(at, constant, Infinity)).toBeCloseTo(0, 6)
      }),
    ))

  test('never rises with the pH and never passes that of the acid alone', () =>
    fc.assert(
      fc.property(ph, pka, between(1, 1000), between(0, 1), (at, constant, strength, more) => {
        const effect = acidEffect(at, constant, strength)
        expect(effect).toBeLessThanOrEqual(ROUNDING)
        expect(acidEffect(at + more, constant, strength)).toBeLessThanOrEqual(effect * ROUNDING)
      }),
    ))

  test('stops growth where the two parts add up to one', () =>
    expect(inhibition({ acid_percent: 0.01, ion_percent: 0.2, acid_alone_percent: 0.02, ion_alone_percent: 0.4 })).toBe(
      1,
    ))

  test('levels found from two pH values stop growth at both', () =>
    fc.assert(
      fc.property(between(0.01, 0.1), between(2, 100), between(3.5, 5), between(0.5, 2), (acid, times, first, more) => {
        const [constant, ion] = [4.2, acid * times]
        const totalAt = (at: number) => {
          const share = undissociatedShare(at, constant)
          return 1 / (share / acid + (1 - share) / ion)
        }
        const found = levelsAlone(
          { ph: first, total_percent: totalAt(first) },
          { ph: first + more, total_percent: totalAt(first + more) },
          constant,
        )
        expect(found?.acid_alone_percent).toBeCloseTo(acid, 6)
        expect(found?.ion_alone_percent).toBeCloseTo(ion, 5)
      }),
    ))

  test('a total that rises faster than the acid falls leaves no effect to the ion', () =>
    expect(levelsAlone({ ph: 4.2, total_percent: 0.05 }, { ph: 5.2, total_percent: 0.5 }, 4.2)).toBeNull())
})
