import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readFattyAcid } from '#engine/chemistry/fatty-acid.ts'
import { gumViscosity } from '#engine/chemistry/gum-viscosity.ts'
import { lyeForFats } from '#engine/chemistry/lye.ts'
import { iodineOfMolecule, saponificationOfMolecule, saponificationValue } from '#engine/chemistry/oil-constants.ts'
import { oxidizability } from '#engine/chemistry/oxidizability.ts'

describe('names of fatty acids', () => {
  // Molar masses as printed by common handbooks: lauric 200.32, stearic 284.48, oleic 282.47, ricinoleic 298.46.
  test.each([
    ['C12:0', 200.32],
    ['C18:0', 284.48],
    ['C18:1', 282.47],
    ['C18:1-OH', 298.46],
  ])('%s weighs %d g/mol', (name, molar_mass) =>
    expect(Math.abs(readFattyAcid(name)!.molar_mass - molar_mass)).toBeLessThan(0.02),
  )
  test.each(['oleic', 'C18', 'C18:9', 'C99:1', 'C18:1 ', 'c18:1'])('%s is none', (name) =>
    expect(readFattyAcid(name)).toBeNull(),
  )
})

describe('single molecules', () => {
  test('a hydrocarbon binds no alkali and, when saturated, no iodine', () =>
    expect([saponificationOfMolecule(422.8, 0), iodineOfMolecule(422.8, 0)]).toEqual([0, 0]))
  test('a free acid binds as much as its own triglyceride and a little less a gram', () => {
    const acid = saponificationOfMolecule(readFattyAcid('C18:1')!.molar_mass, 1)
    expect(acid - saponificationValue({ 'C18:1': 100 })!).toBeGreaterThan(5)
  })
})

describe('lye', () => {
  const batch = {
    saponification_value: 190,
    fats_g: 1000,
    superfat_percent: 0,
    lye: 'koh',
    purity_percent: 100,
  } as const
  test('as pure potassium hydroxide without superfat is the saponification value itself', () =>
    expect(lyeForFats(batch)).toBeCloseTo(190, 9))
  test('as sodium hydroxide weighs 40/56 of it', () =>
    expect(lyeForFats({ ...batch, lye: 'naoh' }) / lyeForFats(batch)).toBeCloseTo(39.997 / 56.106, 9))
  test('falls with the superfat and rises with impurity', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.double({ min: 50, max: 100, noNaN: true }),
        (superfat_percent, purity_percent) => {
          expect(lyeForFats({ ...batch, superfat_percent, purity_percent })).toBeCloseTo(
            (190 * (100 - superfat_percent)) / purity_percent,
            6,
          )
        },
      ),
    ))
  test('is not worked out for what is out of range', () => {
    expect(() => lyeForFats({ ...batch, superfat_percent: -1 })).toThrow(/^superfat_percent/)
    expect(() => lyeForFats({ ...batch, purity_percent: 0 })).toThrow(/^purity_percent/)
    expect(() => lyeForFats({ ...batch, saponification_value: Number.NaN })).toThrow(/^saponification_value/)
  })
})

describe('oxidizability', () => {
  test('weighs the acids one, ten and twenty', () => {
    expect(oxidizability({ 'C18:1': 100 })).toBe(1)
    expect(oxidizability({ 'C18:2': 100 })).toBeCloseTo(10.3, 12)
    expect(oxidizability({ 'C18:3': 100 })).toBeCloseTo(21.6, 12)
    expect(oxidizability({ 'C16:0': 100 })).toBe(0)
  })
  test('does not guess for acids without a weight', () =>
    expect(() => oxidizability({ 'C20:1': 60, 'C18:1': 40 })).toThrow(
      /^fatty_acids: expected at most 10 %.*C20:1.*60.0/,
    ))
})

describe('a gum solution', () => {
  // morris-1981: c^3.3; twice the share is 2^3.3 = 9.85 times the specific viscosity.
  test('of twice the share is about ten times as thick', () =>
    expect(gumViscosity(1, 1000, 2) / 1000).toBeCloseTo(2 ** 3.3, 1))
  test('at the measured share is as measured', () => expect(gumViscosity(1, 1000, 1)).toBeCloseTo(1000, 9))
  test('further off, or too thin to overlap, is not told', () => {
    expect(() => gumViscosity(1, 1000, 2.1)).toThrow(/^wanted_percent/)
    expect(() => gumViscosity(1, 1000, 0.4)).toThrow(/^wanted_percent/)
    expect(() => gumViscosity(1, 5, 1)).toThrow(/^known_mpa_s/)
    expect(() => gumViscosity(1, 30, 0.5)).toThrow(/^wanted_percent: expected a solution in which the coils overlap/)
  })
})
