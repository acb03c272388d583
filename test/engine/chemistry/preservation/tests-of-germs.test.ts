import { describe, expect, test } from 'vitest'
import { fasterTogether } from '#engine/chemistry/preservation/faster-together.ts'
import { halfInhibited } from '#engine/chemistry/preservation/half-inhibited.ts'

describe('the level that stops half of the inocula', () => {
  const RESPONSES = [
    { level_percent: 0.06, grown: 0 },
    { level_percent: 0.04, grown: 10 },
  ]

  test('is read off a straight line, in whatever order the levels come', () =>
    expect(halfInhibited(RESPONSES, 10)).toBeCloseTo(0.05, 10))

  test('is not read beyond the levels that were tried', () => {
    expect(halfInhibited([{ level_percent: 0.04, grown: 10 }], 10)).toBeNull()
    expect(halfInhibited([{ level_percent: 0.04, grown: 2 }], 10)).toBeNull()
  })

  test('more grown than there were is refused', () =>
    expect(() => halfInhibited([{ level_percent: 0.1, grown: 11 }], 10)).toThrow('grown: expected 0 to 10, got 11'))
})

describe('two agents together', () => {
  test('are faster where the time falls clearly below that of the better one', () => {
    expect(fasterTogether(9.5, 9.5, 0.8)).toBe(true)
    expect(fasterTogether(9.2, 4.6, 0.02)).toBe(true)
  })
  test('are not faster where it stays', () => {
    expect(fasterTogether(10, 10, 10)).toBe(false)
    expect(fasterTogether(9.2, 4.6, 4.5)).toBe(false)
  })
})
