import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rebalance } from '#engine/dose/rebalance.ts'
import type { Line } from '#engine/model/formula.ts'

const sum = (lines: readonly Line[]): number => lines.reduce((total, line) => total + (line.share_percent ?? 0), 0)
const shareOf = (lines: readonly Line[], id: string) => lines.find(({ ingredient }) => ingredient === id)?.share_percent

const recipes = fc
  .array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 1, maxLength: 12 })
  .map((shares) => shares.map((share_percent, index): Line => ({ ingredient: `i${index}`, share_percent })))

describe('shares after a change', () => {
  test('add up to 100.0000 always, whatever fills', () =>
    fc.assert(
      fc.property(recipes, fc.option(fc.nat(12)), fc.nat(12), (lines, filler, fixed) => {
        const out = rebalance(lines, filler === null ? null : `i${filler}`, new Set([`i${fixed}`]))
        expect(Math.abs(sum(out) - 100)).toBeLessThan(1e-9)
        expect(out.every(({ share_percent }) => (share_percent ?? 0) > 0)).toBe(true)
      }),
    ))

  test('are whole ten-thousandths of a per cent', () =>
    fc.assert(
      fc.property(recipes, (lines) => {
        for (const { share_percent } of rebalance(lines, 'i0', new Set())) {
          expect(Math.abs((share_percent ?? 0) * 10_000 - Math.round((share_percent ?? 0) * 10_000))).toBeLessThan(1e-6)
        }
      }),
    ))

  test('keep every dose but that of the filler where the filler has room', () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 80_000 }), { minLength: 1, maxLength: 9 }), (parts) => {
        const rest = parts.map((part, index): Line => ({ ingredient: `i${index}`, share_percent: part / 10_000 }))
        const out = rebalance([{ ingredient: 'aqua', share_percent: 50 }, ...rest], 'aqua', new Set())
        for (const { ingredient, share_percent } of rest)
          expect(shareOf(out, ingredient)).toBeCloseTo(share_percent ?? 0, 9)
      }),
    ))

  test('without a filler keep the fixed dose and scale the others alike', () => {
    const lines = [
      { ingredient: 'wax', share_percent: 30 },
      { ingredient: 'oil', share_percent: 60 },
      { ingredient: 'butter', share_percent: 20 },
    ]
    const out = rebalance(lines, null, new Set(['wax']))
    expect(out.map(({ share_percent }) => share_percent)).toEqual([30, 52.5, 17.5])
  })

  test('of an input stay as they were', () => {
    const lines = Object.freeze([
      Object.freeze({ ingredient: 'a', share_percent: 40 }),
      Object.freeze({ ingredient: 'b', share_percent: 40 }),
    ])
    expect(rebalance(lines, 'a', new Set()).map(({ share_percent }) => share_percent)).toEqual([60, 40])
  })

  test('that add up already do not move', () => {
    const lines = [
      { ingredient: 'aqua', share_percent: 70.5 },
      { ingredient: 'glycerin', share_percent: 29.5 },
    ]
    expect(rebalance(lines, 'aqua', new Set())).toEqual(lines)
  })
})
