import { describe, expect, test } from 'vitest'
import { kohBound } from '#engine/calculate/koh-bound.ts'
import { calculate } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const OLIVE = 'olea-europaea-fruit-oil'
const COCONUT = 'cocos-nucifera-oil'

function lye(
  shares: Record<string, number>,
  more: Partial<{ superfat_percent: number; lye: 'naoh' | 'koh'; purity_percent: number }> = {},
) {
  const fats = Object.entries(shares).map(([ingredient, share_percent]) => ({ ingredient, share_percent }))
  return calculate(world, 'lye-for-soap', {
    fats,
    fats_g: 1000,
    superfat_percent: 5,
    lye: 'naoh',
    purity_percent: 100,
    ...more,
  })
}

describe('lye for soap', () => {
  // Olive oil 184 to 196 mg KOH/g (CXS 33): middle 190, × 39.997 / 56.106 is 135.4 mg NaOH; common lists say 0.134 to 0.136.
  test('a kilogram of olive oil without superfat takes 135 g of sodium hydroxide', () =>
    expect(lye({ [OLIVE]: 100 }, { superfat_percent: 0 }).values['lye_g']).toBeCloseTo(135.45, 1))
  // Coconut oil 248 to 265 (CXS 210): 256.5 × 39.997 / 56.106 is 182.9 mg.
  test('a mixture lies at the mean by mass', () => {
    const [olive, coconut, half] = [{ [OLIVE]: 100 }, { [COCONUT]: 100 }, { [OLIVE]: 50, [COCONUT]: 50 }].map(
      (fats) => lye(fats).values['lye_g']!,
    )
    expect(half).toBeCloseTo((olive! + coconut!) / 2, 9)
    expect(coconut!).toBeCloseTo(182.86 * 0.95, 1)
  })
  test('stands between what the stated ranges allow', () => {
    const { lye_g, lye_low_g, lye_high_g, water_g } = lye({ [OLIVE]: 70, [COCONUT]: 30 }).values
    expect(lye_low_g!).toBeLessThan(lye_g!)
    expect(lye_high_g!).toBeGreaterThan(lye_g!)
    expect(water_g!).toBeCloseTo(2 * lye_g!, 9)
  })
  test('a fatty acid counts by its acid value', () => {
    const acid = kohBound(world.find('stearic-acid')!)!
    expect(acid.what).toBe('acid value')
    expect(lye({ 'stearic-acid': 100 }, { lye: 'koh', superfat_percent: 0 }).values['lye_g']).toBeCloseTo(acid.mg, 6)
  })
  test('carries the caution that goes with lye', () => {
    const text = lye({ [OLIVE]: 100 })
      .steps.map((step) => step.text)
      .join(' ')
    expect(text).toMatch(/goggles.*gloves.*never water into lye/)
  })
  test('warns when a lot at the bottom of the range would leave lye free', () => {
    const said = (superfat_percent: number) =>
      lye({ [OLIVE]: 100 }, { superfat_percent }).steps.find(({ text }) => text.startsWith('If your lots'))!
    expect(said(0).text).toContain('FREE')
    expect(said(0).value).toBeLessThan(0)
    expect(said(8).text).not.toContain('FREE')
    expect(said(8).value).toBeGreaterThan(0)
  })
})

describe('lye is not guessed', () => {
  test('for a fat of unknown saponification value', () =>
    expect(() => lye({ [OLIVE]: 90, 'avena-sativa-kernel-flour': 10 })).toThrow(
      /^fats\/1\/ingredient: the saponification value of .* is not known/,
    ))
  test('for an id that nobody knows', () =>
    expect(() => lye({ 'olive-oyl': 100 })).toThrow(/^fats\/0\/ingredient: no ingredient/))
  test('for what alkali leaves alone', () => expect(() => lye({ squalane: 100 })).toThrow(/^fats: expected fats/))
  test('for shares that do not add up', () =>
    expect(() => lye({ [OLIVE]: 60, [COCONUT]: 30 })).toThrow(/^fats: expected shares.*got 90 %/))
})
