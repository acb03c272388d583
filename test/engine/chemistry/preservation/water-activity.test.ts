import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { waterActivity } from '#engine/chemistry/preservation/water-activity.ts'

const GLYCEROL = { molar_mass: 92.09, particles: 1, norrish: 1.16 }
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('water activity', () => {
  test('of plain water is one', () => expect(waterActivity(100, [])).toBe(1))

  test('falls with every gram that dissolves, and stays between nothing and one', () =>
    fc.assert(
      fc.property(between(0, 200), between(0.1, 50), between(0, 4), (grams, more, norrish) => {
        const at = (g: number) => waterActivity(100, [{ ...GLYCEROL, norrish, grams: g }])
        expect(at(grams + more)).toBeLessThan(at(grams))
        expect(at(grams + more)).toBeGreaterThan(0)
      }),
    ))

  test('without a constant is estimated too high rather than too low', () =>
    fc.assert(
      fc.property(between(1, 200), between(0.01, 4), (grams, norrish) => {
        const ideal = waterActivity(100, [{ grams, molar_mass: 92.09, particles: 1 }])
        expect(waterActivity(100, [{ ...GLYCEROL, norrish, grams }])).toBeLessThan(ideal)
      }),
    ))

  // Textbook values of saturated vapour over sodium chloride solutions, from memory: 10 % by mass 0.935.
  test('of salt water comes near the textbook', () =>
    expect(waterActivity(90, [{ grams: 10, molar_mass: 58.44, particles: 2 }])).toBeCloseTo(0.935, 2))

  // Glycerol-water at 25 C, 50 % by mass: about 0.83 to 0.84 (humidity tables, from memory).
  test('of glycerol and water in equal parts comes near the tables', () => {
    const activity = waterActivity(50, [{ ...GLYCEROL, grams: 50 }])
    expect(activity).toBeGreaterThan(0.79)
    expect(activity).toBeLessThan(0.85)
  })

  test('names what is out of range', () =>
    expect(() => waterActivity(100, [{ ...GLYCEROL, grams: 5, molar_mass: 0 }])).toThrow('molar_mass: expected'))
})
