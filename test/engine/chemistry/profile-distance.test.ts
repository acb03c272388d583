import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { profileDistance, scaledProfile } from '#engine/chemistry/profile-distance.ts'

const ACIDS = ['C12:0', 'C16:0', 'C16:1', 'C18:0', 'C18:1', 'C18:2', 'C18:3']
const profiles = fc
  .array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: ACIDS.length, maxLength: ACIDS.length })
  .filter((shares) => shares.reduce((sum, share) => sum + share, 0) > 20)
  .map((shares) => Object.fromEntries(ACIDS.map((acid, at) => [acid, shares[at]!])))

describe('distance of two profiles', () => {
  test('is nothing between a profile and itself, at any scale', () =>
    fc.assert(
      fc.property(profiles, (profile) => {
        const twice = Object.fromEntries(Object.entries(profile).map(([acid, share]) => [acid, share * 2]))
        const { cosine, aitchison } = profileDistance(profile, twice)
        expect(cosine).toBeCloseTo(0, 10)
        expect(aitchison).toBeCloseTo(0, 10)
      }),
    ))
  test('is the same either way round and never negative', () =>
    fc.assert(
      fc.property(profiles, profiles, (a, b) => {
        const [there, back] = [profileDistance(a, b), profileDistance(b, a)]
        expect(back.cosine).toBeCloseTo(there.cosine, 10)
        expect(back.aitchison).toBeCloseTo(there.aitchison, 10)
        expect(Math.min(there.cosine, there.aitchison)).toBeGreaterThanOrEqual(0)
      }),
    ))
  // Two acids, 80:20 against 50:50: the logs of the ratios are ln 4 and 0, a distance of ln 4 / √2.
  test('by ratios is ln 4 / √2 for 80:20 against 50:50', () =>
    expect(profileDistance({ 'C18:1': 80, 'C18:2': 20 }, { 'C18:1': 50, 'C18:2': 50 }).aitchison).toBeCloseTo(
      Math.log(4) / Math.SQRT2,
      12,
    ))
  test('traces under one per cent in both are left out', () => {
    const { acids, aitchison } = profileDistance({ 'C18:1': 99.1, 'C20:1': 0.9 }, { 'C18:1': 100 })
    expect(acids).toEqual(['C18:1'])
    expect(aitchison).toBe(0)
  })
  test('a small acid that only one has moves the ratios and hardly the angle', () => {
    const { cosine, aitchison } = profileDistance({ 'C18:1': 97, 'C22:1': 3 }, { 'C18:1': 100 })
    expect(cosine).toBeLessThan(0.001)
    expect(aitchison).toBeGreaterThan(2.5)
  })
  test('alpha-linolenic acid is one acid under both its names, gamma-linolenic another', () => {
    expect(scaledProfile({ 'C18:3': 5, 'C18:3n3': 5, 'C18:3n6': 10 })).toEqual({ 'C18:3': 50, 'C18:3n6': 50 })
  })
  test('an empty profile has none', () => {
    expect(() => profileDistance({}, { 'C18:1': 1 })).toThrow(/^from/)
    expect(() => profileDistance({ 'C18:1': 1 }, {})).toThrow(/^to/)
  })
})
