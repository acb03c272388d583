import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { iodineValue, profileCosine, saponificationValue } from '#engine/chemistry/oil-constants.ts'

const ACIDS = ['C8:0', 'C12:0', 'C16:0', 'C18:0', 'C18:1', 'C18:2', 'C18:3', 'C22:1']
const profiles = fc
  .array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: ACIDS.length, maxLength: ACIDS.length })
  .filter((shares) => shares.some((share) => share > 1))
  .map((shares) => Object.fromEntries(ACIDS.map((acid, index) => [acid, shares[index]!])))

/** Pure triglycerides, worked out by hand from the molar mass of the whole molecule. */
const PURE = [
  { acid: 'C18:1', molar_mass: 885.45, double_bonds: 3 }, // triolein
  { acid: 'C18:0', molar_mass: 891.5, double_bonds: 0 }, // tristearin
  { acid: 'C18:2', molar_mass: 879.4, double_bonds: 6 }, // trilinolein
  { acid: 'C12:0', molar_mass: 639.0, double_bonds: 0 }, // trilaurin
]

describe.each(PURE)('the triglyceride of $acid alone', ({ acid, molar_mass, double_bonds }) => {
  test('takes up one I2 a double bond', () =>
    expect(iodineValue({ [acid]: 100 })).toBeCloseTo((double_bonds * 253.81 * 100) / molar_mass, 1))
  test('takes three KOH a molecule', () =>
    expect(saponificationValue({ [acid]: 100 })).toBeCloseTo((3 * 56106) / molar_mass, 1))
})

test('the scale of the shares changes nothing', () =>
  fc.assert(
    fc.property(profiles, fc.double({ min: 0.01, max: 50, noNaN: true }), (profile, factor) => {
      const scaled = Object.fromEntries(Object.entries(profile).map(([acid, share]) => [acid, share * factor]))
      expect(iodineValue(scaled)!).toBeCloseTo(iodineValue(profile)!, 6)
      expect(saponificationValue(scaled)!).toBeCloseTo(saponificationValue(profile)!, 6)
    }),
  ))

test('a mixture lies between its acids', () =>
  fc.assert(
    fc.property(profiles, (profile) => {
      const iodine = iodineValue(profile)!
      expect(iodine).toBeGreaterThanOrEqual(0)
      expect(iodine).toBeLessThanOrEqual(iodineValue({ 'C18:3': 1 })! + 1e-9)
      const saponification = saponificationValue(profile)!
      expect(saponification).toBeGreaterThanOrEqual(saponificationValue({ 'C22:1': 1 })! - 1e-9)
      expect(saponification).toBeLessThanOrEqual(saponificationValue({ 'C8:0': 1 })! + 1e-9)
    }),
  ))

test('without a known acid there is no value', () => {
  expect([iodineValue({}), saponificationValue({ other: 100 })]).toEqual([null, null])
})

test('isomers of one acid count alike, and a hydroxyl makes it heavier', () => {
  expect(iodineValue({ 'C18:3n6': 100 })).toBe(iodineValue({ 'C18:3': 100 }))
  expect(saponificationValue({ 'C18:1-OH': 100 })!).toBeLessThan(saponificationValue({ 'C18:1': 100 })!)
})

describe('likeness of two profiles', () => {
  test('is one for a profile with itself, at any scale', () => {
    const olive = { 'C16:0': 13, 'C18:1': 71, 'C18:2': 10 }
    expect(profileCosine(olive, olive)).toBeCloseTo(1, 12)
    expect(profileCosine(olive, { 'C16:0': 26, 'C18:1': 142, 'C18:2': 20 })).toBeCloseTo(1, 12)
  })
  test('is nothing where no acid is shared', () => expect(profileCosine({ 'C12:0': 100 }, { 'C18:1': 100 })).toBe(0))
  test('is the same either way round and stays between 0 and 1', () =>
    fc.assert(
      fc.property(profiles, profiles, (a, b) => {
        const cosine = profileCosine(a, b)
        expect(cosine).toBeCloseTo(profileCosine(b, a), 12)
        expect(cosine).toBeGreaterThanOrEqual(0)
        expect(cosine).toBeLessThanOrEqual(1 + 1e-12)
      }),
    ))
  test('traces below one per cent are left out', () =>
    expect(profileCosine({ 'C18:1': 80, 'C20:1': 0.9 }, { 'C18:1': 80 })).toBe(1))
})
