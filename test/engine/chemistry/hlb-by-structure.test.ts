import { describe, expect, test } from 'vitest'
import { hlbByGroups, hlbByOxyethylene, hlbBySaponification } from '#engine/chemistry/hlb-by-structure.ts'

describe('HLB by oxyethylene', () => {
  test('runs from 0 without any to nearly 20 for a long chain', () => {
    expect(hlbByOxyethylene(270, 0)).toBe(0)
    expect(hlbByOxyethylene(270, 500)).toBeGreaterThan(19.7)
    expect(hlbByOxyethylene(270, 500)).toBeLessThan(20)
  })
  test('is 10 where half of the mass is oxyethylene', () => expect(hlbByOxyethylene(440.53, 10)).toBeCloseTo(10, 9))
  test('names what is out of range', () => {
    expect(() => hlbByOxyethylene(10, 5)).toThrow(/^hydrophobe_molar_mass/)
    expect(() => hlbByOxyethylene(270, -1)).toThrow(/^oxyethylene_units/)
  })
})

describe('HLB by saponification', () => {
  test('is 20 for what has no ester and 0 for what is all ester', () => {
    expect(hlbBySaponification(0, 200)).toBe(20)
    expect(hlbBySaponification(200, 200)).toBe(0)
  })
  test('refuses an ester that saponifies more than its own acid', () =>
    expect(() => hlbBySaponification(210, 200)).toThrow(/^saponification_value: expected 0 to 200/))
})

describe('HLB by groups', () => {
  test('falls by 0.475 a carbon', () => expect(hlbByGroups([1.9], 16) - hlbByGroups([1.9], 17)).toBeCloseTo(0.475, 12))
  test('adds groups up', () => expect(hlbByGroups([1.9, 1.9, 2.4], 17)).toBeCloseTo(7 + 6.2 - 8.075, 12))
  test('needs a hydrophilic group', () => expect(() => hlbByGroups([], 16)).toThrow(/^hydrophilic/))
})
