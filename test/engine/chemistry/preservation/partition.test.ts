import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { partitionWithMicelles, totalToFree } from '#engine/chemistry/preservation/partition-with-micelles.ts'
import { twoPhasePartition } from '#engine/chemistry/preservation/two-phase-partition.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const total = between(0.001, 5)
const ratio = between(0, 500)
const oil = between(0, 20)
const surfactant = between(0, 20)
const binding = between(0, 10)
const inputs = fc.record({
  total_percent: total,
  partition_ratio: ratio,
  oil_to_water: oil,
  binding_per_percent: binding,
  surfactant_percent: surfactant,
})
const ROUNDING = 1 + 1e-9

describe('between oil and water', () => {
  test('what is in oil and water together is what went in', () =>
    fc.assert(
      fc.property(total, ratio, oil, (total_percent, partition_ratio, oil_to_water) => {
        const { water_percent, oil_percent } = twoPhasePartition({ total_percent, partition_ratio, oil_to_water })
        expect((water_percent + oil_percent * oil_to_water) / (1 + oil_to_water)).toBeCloseTo(total_percent, 8)
      }),
    ))

  test('the water never holds more than its solubility, and the oil then keeps the ratio', () =>
    fc.assert(
      fc.property(total, ratio, oil, between(0.01, 3), (total_percent, partition_ratio, oil_to_water, cap) => {
        const input = { total_percent, partition_ratio, oil_to_water, water_solubility_percent: cap }
        const { water_percent, oil_percent } = twoPhasePartition(input)
        expect(water_percent).toBeLessThanOrEqual(cap)
        expect(oil_percent).toBeCloseTo(partition_ratio * water_percent, 8)
      }),
    ))

  test('without oil all of it is in the water', () =>
    expect(twoPhasePartition({ total_percent: 0.2, partition_ratio: 80, oil_to_water: 0 }).water_percent).toBe(0.2))

  test.each([
    ['total_percent', { total_percent: 101, partition_ratio: 1, oil_to_water: 1 }],
    ['partition_ratio', { total_percent: 1, partition_ratio: -1, oil_to_water: 1 }],
    ['oil_to_water', { total_percent: 1, partition_ratio: 1, oil_to_water: Number.NaN }],
    [
      'water_solubility_percent',
      { total_percent: 1, partition_ratio: 1, oil_to_water: 1, water_solubility_percent: 0 },
    ],
  ])('%s out of range is named', (name, input) => expect(() => twoPhasePartition(input)).toThrow(`${name}: expected`))
})

describe('beside oil and micelles', () => {
  test('free never exceeds the total of the water phase', () =>
    fc.assert(
      fc.property(inputs, (input) => {
        const { free_percent } = partitionWithMicelles(input)
        expect(free_percent).toBeLessThanOrEqual(input.total_percent * (1 + input.oil_to_water) * ROUNDING)
      }),
    ))

  test('free never exceeds the total where the oil takes at least as much as the water', () =>
    fc.assert(
      fc.property(inputs, (input) => {
        const { free_percent } = partitionWithMicelles({ ...input, partition_ratio: input.partition_ratio + 1 })
        expect(free_percent).toBeLessThanOrEqual(input.total_percent * ROUNDING)
      }),
    ))

  // d free / d phi has the sign of R - K: the oil draws where it takes more than water and micelles together.
  test('at a fixed total more oil lowers the free level exactly where K exceeds R', () =>
    fc.assert(
      fc.property(inputs, between(0.01, 5), (input, more) => {
        const before = partitionWithMicelles(input)
        const after = partitionWithMicelles({ ...input, oil_to_water: input.oil_to_water + more })
        const change = after.free_percent - before.free_percent
        if (input.partition_ratio > before.total_to_free) expect(change).toBeLessThan(1e-12)
        else expect(change).toBeGreaterThan(-1e-12)
      }),
    ))

  test('at a fixed dose for the water phase more oil never raises the free level', () =>
    fc.assert(
      fc.property(inputs, between(0.01, 5), (input, more) => {
        const phi = input.oil_to_water + more
        const dose = input.total_percent * (1 + input.oil_to_water)
        const before = partitionWithMicelles(input)
        const after = partitionWithMicelles({ ...input, oil_to_water: phi, total_percent: dose / (1 + phi) })
        expect(after.free_percent).toBeLessThanOrEqual(before.free_percent * ROUNDING)
      }),
    ))

  test('more nonionic surfactant never raises the free level', () =>
    fc.assert(
      fc.property(inputs, between(0, 20), (input, more) => {
        const before = partitionWithMicelles(input)
        const after = partitionWithMicelles({ ...input, surfactant_percent: input.surfactant_percent + more })
        expect(after.free_percent).toBeLessThanOrEqual(before.free_percent * ROUNDING)
      }),
    ))

  test('without surfactant it is the partition between two phases', () =>
    fc.assert(
      fc.property(inputs, (input) => {
        const { free_percent } = partitionWithMicelles({ ...input, surfactant_percent: 0 })
        expect(free_percent).toBeCloseTo(twoPhasePartition(input).water_percent, 10)
      }),
    ))

  test('total over free is a straight line that starts at one', () =>
    fc.assert(
      fc.property(binding, surfactant, (k, s) => {
        expect(totalToFree(k, 0)).toBe(1)
        expect(totalToFree(k, s) - 1).toBeCloseTo(k * s, 10)
      }),
    ))

  test('a binding constant out of range is named', () =>
    expect(() => totalToFree(-1, 2)).toThrow('binding_per_percent: expected 0 to 1000, got -1'))
})
