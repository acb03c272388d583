import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chargeOf, effectiveBuffers } from '#engine/chemistry/ph/effective-buffer.ts'
import type { EffectiveBuffer } from '#engine/chemistry/ph/effective-buffer.ts'

const points = (buffer: EffectiveBuffer, phs: number[], error = 1e-6) =>
  phs.map((ph) => ({ ph, charge: chargeOf(buffer, ph), error }))

test('a buffer holds half of its total at its constant', () => {
  expect(chargeOf({ pka: 6, base: 0.001, size: 0.02 }, 6)).toBeCloseTo(0.011, 12)
})

test('three points of one buffer find it', () => {
  fc.assert(
    fc.property(fc.integer({ min: 50, max: 80 }), fc.double({ min: 1e-3, max: 0.1, noNaN: true }), (tenths, size) => {
      const buffer = { pka: tenths / 10, base: 0.002, size }
      const found = effectiveBuffers(points(buffer, [8, 6.5, 5.5], size * 1e-6), { min: 4, max: 9 })
      expect(found).toHaveLength(1)
      expect(found[0]!.pka).toBeCloseTo(buffer.pka, 9)
      expect(found[0]!.size).toBeCloseTo(size, 6)
    }),
  )
})

test('two points leave the constant open', () => {
  const found = effectiveBuffers(points({ pka: 6, base: 0, size: 0.01 }, [7, 6.5]), { min: 4, max: 8 })
  expect(found.length).toBeGreaterThan(30)
})

test('a curve that falls on the way down is no buffer', () => {
  const falling = [
    { ph: 7, charge: 0.01, error: 1e-6 },
    { ph: 6, charge: 0.005, error: 1e-6 },
  ]
  expect(effectiveBuffers(falling, { min: 4, max: 8 })).toEqual([])
})
