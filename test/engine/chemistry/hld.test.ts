import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { curvatureOfBlend, deviationOfAnionic, deviationOfEthoxylate, optimumSalinity } from '#engine/chemistry/hld.ts'

const BY = { oil: 0.17, temperature: 0.01, salt: 0.13 }
const here = { salt_g_per_100_ml: 2, oil_eacn: 8, curvature: -1, temp_c: 25 }

describe('curvature of a blend', () => {
  test('is averaged by moles: the lighter one counts more', () => {
    const light = { share_percent: 50, molar_mass: 250, curvature: -2 }
    const heavy = { share_percent: 50, molar_mass: 750, curvature: 2 }
    expect(curvatureOfBlend([light, heavy])).toBeCloseTo(-1, 12)
  })
  test('of one is its own', () =>
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), (curvature) => {
        expect(curvatureOfBlend([{ share_percent: 3, molar_mass: 400, curvature }])).toBeCloseTo(curvature, 10)
      }),
    ))
  test('names the part that is wrong', () => {
    expect(() => curvatureOfBlend([])).toThrow(/^parts/)
    expect(() => curvatureOfBlend([{ share_percent: 1, molar_mass: 1, curvature: 0 }])).toThrow(/^parts\/0\/molar_mass/)
  })
})

describe('deviation', () => {
  test('rises with salt and falls with a less polar oil', () => {
    expect(deviationOfAnionic({ ...here, salt_g_per_100_ml: 4 }, BY)).toBeGreaterThan(deviationOfAnionic(here, BY))
    expect(deviationOfAnionic({ ...here, oil_eacn: 12 }, BY)).toBeLessThan(deviationOfAnionic(here, BY))
  })
  // hld-course: warming makes ethoxylates more lipophilic and anionics less.
  test('goes up with warmth for ethoxylates and down for anionics', () => {
    const warm = { ...here, temp_c: 45 }
    expect(deviationOfEthoxylate(warm, BY)).toBeGreaterThan(deviationOfEthoxylate(here, BY))
    expect(deviationOfAnionic(warm, BY)).toBeLessThan(deviationOfAnionic(here, BY))
  })
  test('is nothing at the optimum salinity', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        (oil_eacn, curvature, temp_c) => {
          const salt_g_per_100_ml = optimumSalinity({ oil_eacn, curvature, temp_c }, BY)
          expect(deviationOfAnionic({ salt_g_per_100_ml, oil_eacn, curvature, temp_c }, BY)).toBeCloseTo(0, 9)
        },
      ),
    ))
  test('of an anionic needs salt, of an ethoxylate none', () => {
    expect(() => deviationOfAnionic({ ...here, salt_g_per_100_ml: 0 }, BY)).toThrow(/^salt_g_per_100_ml/)
    expect(deviationOfEthoxylate({ ...here, salt_g_per_100_ml: 0 }, BY)).toBeCloseTo(-0.17 * 8 - 1, 12)
  })
})
