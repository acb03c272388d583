import { describe, expect, test } from 'vitest'
import { calculate } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()

describe('two-phase-partition', () => {
  // BEAN1972, Table VIII: 0.2 % methylparaben, K 0.02, 0.25 parts of oil: saturated at 0.24 %.
  test('caps the water at the solubility and says so', () => {
    const { values, steps } = calculate(world, 'two-phase-partition', {
      total_percent: 0.2,
      partition_ratio: 0.02,
      oil_to_water: 0.25,
      water_solubility_percent: 0.24,
    })
    expect(values).toEqual({ water_percent: 0.24, oil_percent: expect.closeTo(0.0048, 10) })
    expect(steps.map(({ value }) => value)).toEqual([expect.closeTo(0.24876, 4), 0.24, expect.closeTo(0.0048, 10)])
  })

  test('without a solubility has a step less', () =>
    expect(
      calculate(world, 'two-phase-partition', { total_percent: 1, partition_ratio: 1, oil_to_water: 2.5 }),
    ).toMatchObject({ values: { water_percent: 1, oil_percent: 1 }, sources: ['BEAN1965', 'BEAN1972'] }))
})

// Worked from total · (phi + 1) / (K · phi + 1 + k · S): 0.3 · 1.25 / (0.005 + 3.13).
test('partition-with-micelles gives free level and total over free', () => {
  const { values } = calculate(world, 'partition-with-micelles', {
    total_percent: 0.3,
    partition_ratio: 0.02,
    oil_to_water: 0.25,
    binding_per_percent: 0.71,
    surfactant_percent: 3,
  })
  expect(values).toEqual({ free_percent: expect.closeTo(0.11962, 5), total_to_free: expect.closeTo(3.13, 10) })
})

// MARTIN: 0.25 mg/ml undissociated benzoic acid at pH 4 with K 5.33 and equal parts of oil: 1.74 mg/ml.
test('acid-in-emulsion gives the total for the water phase', () => {
  const { values } = calculate(world, 'acid-in-emulsion', {
    undissociated_percent: 0.025,
    ph: 4,
    pka: 4.194,
    partition_ratio: 5.33,
    oil_to_water: 1,
  })
  expect(values['total_percent']).toBeCloseTo(0.174, 3)
})

// ADDBOOK, p. 733: sorbic acid at pH 3.1 and 20 C.
test('acid-solubility gives the level of all forms', () => {
  const { values } = calculate(world, 'acid-solubility', { intrinsic_solubility_percent: 0.147, ph: 3.1, pka: 4.76 })
  expect(values['solubility_percent']).toBeCloseTo(0.15, 3)
})
