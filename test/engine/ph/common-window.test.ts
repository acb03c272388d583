import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { commonOf } from '#engine/ph/common-window.ts'
import type { LineWindow } from '#engine/ph/line-window.ts'
import type { Claim } from '#engine/model/claim.ts'

const claim: Claim = {
  id: 'x#1',
  property: 'ph_stability',
  unit: 'pH',
  kind: 'assertion',
  source: 'S-1',
  locator: 'p. 1',
  access: 'read',
  date: '2026-11-25',
  used: true,
}
const windowOf = (ingredient: string, min?: number, max?: number, kind: 'keeps' | 'works' = 'keeps'): LineWindow => ({
  ingredient,
  inci: ingredient.toUpperCase(),
  kind,
  window: { ...(min !== undefined && { min }), ...(max !== undefined && { max }) },
  claim,
})

test('without windows everything is open', () => {
  expect(commonOf([])).toEqual({ window: {}, low: null, high: null, gap: null, excludes: [] })
})

test('each end is set by the windows that cut deepest there', () => {
  const [a, b, c] = [windowOf('a', 3, 8), windowOf('b', 4, 9), windowOf('c', 4, undefined, 'works')]
  const common = commonOf([a, b, c])
  expect(common.window).toEqual({ min: 4, max: 8 })
  expect(common.low).toEqual({ ph: 4, setBy: [b, c] })
  expect(common.high).toEqual({ ph: 8, setBy: [a] })
  expect(common.excludes).toEqual([])
})

test('where nothing is left the pairs that exclude each other are named with their gap, the widest first', () => {
  const [low, mid, high] = [windowOf('low', 2, 4), windowOf('mid', 5, 6), windowOf('high', 7, 9)]
  const common = commonOf([high, low, mid])
  expect(common.window).toBeNull()
  expect(common.excludes).toEqual([
    { lower: low, upper: high, gap: { min: 4, max: 7 } },
    { lower: low, upper: mid, gap: { min: 4, max: 5 } },
    { lower: mid, upper: high, gap: { min: 6, max: 7 } },
  ])
  expect(common.gap).toEqual({ min: 4, max: 7 })
})

describe('for any windows', () => {
  const window = fc
    .tuple(fc.integer({ min: 0, max: 14 }), fc.integer({ min: 0, max: 14 }), fc.integer({ min: 0, max: 99 }))
    .map(([a, b, n]) => windowOf(`line-${n}`, Math.min(a, b), Math.max(a, b)))
  test('there is no common pH exactly when some pair excludes each other', () => {
    fc.assert(
      fc.property(fc.array(window, { maxLength: 8 }), (windows) => {
        const { window: common, excludes } = commonOf(windows)
        expect(common === null).toBe(excludes.length > 0)
      }),
    )
  })
  test('a pH lies in the common window exactly when it lies in every window', () => {
    fc.assert(
      fc.property(
        fc.array(window, { minLength: 1, maxLength: 8 }),
        fc.double({ min: 0, max: 14, noNaN: true }),
        (windows, ph) => {
          const { window: common } = commonOf(windows)
          const inAll = windows.every(({ window: { min = 0, max = 14 } }) => ph >= min && ph <= max)
          expect(common !== null && ph >= (common.min ?? 0) && ph <= (common.max ?? 14)).toBe(inAll)
        },
      ),
    )
  })
})
