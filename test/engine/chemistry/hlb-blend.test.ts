import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { emulsifierPair, hlbOfBlend, requiredHlbOfOils } from '#engine/chemistry/hlb-blend.ts'

const part = fc.record({
  share_percent: fc.double({ min: 0.01, max: 100, noNaN: true }),
  hlb: fc.double({ min: 0, max: 50, noNaN: true }),
})
const blends = fc.array(part, { minLength: 1, maxLength: 6 })

describe('HLB of a blend', () => {
  test('lies between the lowest and the highest of its parts', () =>
    fc.assert(
      fc.property(blends, (parts) => {
        const hlb = hlbOfBlend(parts)
        expect(hlb).toBeGreaterThanOrEqual(Math.min(...parts.map((one) => one.hlb)) - 1e-9)
        expect(hlb).toBeLessThanOrEqual(Math.max(...parts.map((one) => one.hlb)) + 1e-9)
      }),
    ))
  test('does not depend on order or scale', () =>
    fc.assert(
      fc.property(blends, (parts) => {
        const half = [...parts].reverse().map((one) => ({ ...one, share_percent: one.share_percent / 2 }))
        expect(hlbOfBlend(half)).toBeCloseTo(hlbOfBlend(parts), 8)
      }),
    ))
  test('names the part that is wrong', () => {
    expect(() => hlbOfBlend([])).toThrow('emulsifiers: expected at least one part')
    expect(() => hlbOfBlend([{ share_percent: 0, hlb: 5 }])).toThrow('emulsifiers/0/share_percent')
    expect(() =>
      requiredHlbOfOils([
        { share_percent: 1, required_hlb: 5 },
        { share_percent: 1, required_hlb: Number.NaN },
      ]),
    ).toThrow('oils/1/required_hlb')
  })
  // hlb-exercise-a prints 12.1 because it rounds each contribution before adding; the sum is 445 / 37.
  test('is not rounded on the way', () => {
    const oils = [
      { share_percent: 35, required_hlb: 12 },
      { share_percent: 1, required_hlb: 10 },
      { share_percent: 1, required_hlb: 15 },
    ]
    expect(requiredHlbOfOils(oils)).toBeCloseTo(445 / 37, 12)
  })
})

describe('a pair of emulsifiers', () => {
  const hlbs = fc.tuple(fc.double({ min: 0, max: 20, noNaN: true }), fc.double({ min: 0.5, max: 20, noNaN: true }))
  test('mixed in the shares found has the wanted HLB', () =>
    fc.assert(
      fc.property(hlbs, fc.double({ min: 0, max: 1, noNaN: true }), ([low, gap], at) => {
        const [high, target] = [low + gap, low + at * gap]
        const { high_percent, low_percent } = emulsifierPair(Math.min(target, high), high, low)
        expect(high_percent + low_percent).toBeCloseTo(100, 9)
        expect((high_percent * high + low_percent * low) / 100).toBeCloseTo(target, 6)
      }),
    ))
  test('does not reach beyond its ends', () => {
    expect(emulsifierPair(4.3, 15, 4.3)).toEqual({ high_percent: 0, low_percent: 100 })
    expect(() => emulsifierPair(15.1, 15, 4.3)).toThrow(/^target_hlb: expected 4.3 to 15/)
    expect(() => emulsifierPair(4, 15, 4.3)).toThrow(RangeError)
  })
  test('of like HLB is none', () => expect(() => emulsifierPair(8, 8, 8)).toThrow(/^high_hlb/))
})
