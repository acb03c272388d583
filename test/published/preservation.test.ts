import { describe, expect, test } from 'vitest'
import { acidInEmulsion } from '#engine/chemistry/preservation/acid-in-emulsion.ts'
import { acidSolubility } from '#engine/chemistry/preservation/acid-solubility.ts'
import { halfInhibited } from '#engine/chemistry/preservation/half-inhibited.ts'
import { acidEffect, levelsAlone } from '#engine/chemistry/preservation/ion-effect.ts'
import { twoPhasePartition } from '#engine/chemistry/preservation/two-phase-partition.ts'
import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'

// BEAN1965: J. Soc. Cosmet. Chem. 16 (1965), Table II: phenol in liquid paraffin and water, K 0.067, 0.4 % in all.
describe('phenol between liquid paraffin and water', () => {
  const PRINTED = [
    { oil_to_water: 0.2, water_percent: 0.474, oil_percent: 0.031 },
    { oil_to_water: 2.5, water_percent: 1.199, oil_percent: 0.08 },
    { oil_to_water: 10, water_percent: 2.636, oil_percent: 0.176 },
  ]
  test.each(PRINTED)(
    'at $oil_to_water parts of oil $water_percent % is in the water',
    ({ oil_to_water, ...printed }) => {
      const got = twoPhasePartition({ total_percent: 0.4, partition_ratio: 0.067, oil_to_water })
      expect(Math.abs(got.water_percent / printed.water_percent - 1)).toBeLessThan(0.005)
      expect(Math.abs(got.oil_percent - printed.oil_percent)).toBeLessThan(0.002)
    },
  )
})

// BEAN1965, same table: chlorocresol in arachis oil, K 116.7, 4 % in all.
test.each([
  { oil_to_water: 1, water_percent: 0.068, oil_percent: 7.93 },
  { oil_to_water: 5, water_percent: 0.0411, oil_percent: 4.79 },
])('chlorocresol at $oil_to_water parts of arachis oil leaves $water_percent % in the water', (row) => {
  const got = twoPhasePartition({ total_percent: 4, partition_ratio: 116.7, oil_to_water: row.oil_to_water })
  expect(Math.abs(got.water_percent / row.water_percent - 1)).toBeLessThan(0.01)
  expect(Math.abs(got.oil_percent / row.oil_percent - 1)).toBeLessThan(0.01)
})

// BEAN1972: J. Soc. Cosmet. Chem. 23 (1972), Table VIII: methylparaben in liquid paraffin, K 0.02, saturated at 0.24 %.
describe('methylparaben beside liquid paraffin', () => {
  const PRINTED = [
    { total_percent: 0.1, oil_to_water: 0.11, water_percent: 0.11 },
    { total_percent: 0.1, oil_to_water: 0.43, water_percent: 0.14 },
    { total_percent: 0.1, oil_to_water: 1, water_percent: 0.2 },
    { total_percent: 0.2, oil_to_water: 0.25, water_percent: 0.24 },
    { total_percent: 0.2, oil_to_water: 0.66, water_percent: 0.24 },
  ]
  const LAST_DIGIT = 0.006
  test.each(PRINTED)('$total_percent % with $oil_to_water parts of oil: $water_percent % in the water', (row) => {
    const got = twoPhasePartition({ ...row, partition_ratio: 0.02, water_solubility_percent: 0.24 })
    expect(Math.abs(got.water_percent - row.water_percent)).toBeLessThan(LAST_DIGIT)
  })

  // The same table, K 80: prints 0.027 where its own relation gives 0.0227. Kept, not bent.
  test.fails('disputed: 0.2 % with 0.11 parts of soya oil', () =>
    expect(
      Math.abs(
        twoPhasePartition({ total_percent: 0.2, partition_ratio: 80, oil_to_water: 0.11 }).water_percent - 0.027,
      ),
    ).toBeLessThan(0.0006),
  )

  // Below it the relation holds to the last digit; which paraben has K 80 the paper prints in two ways.
  test.each([
    { oil_to_water: 0.43, water_percent: 0.008 },
    { oil_to_water: 1, water_percent: 0.005 },
  ])('0.2 % with $oil_to_water parts of soya oil, K 80', ({ oil_to_water, water_percent }) =>
    expect(
      Math.abs(
        twoPhasePartition({ total_percent: 0.2, partition_ratio: 80, oil_to_water }).water_percent - water_percent,
      ),
    ).toBeLessThan(0.0006),
  )
})

// ANDERSON1967: J. Soc. Cosmet. Chem. 18 (1967), 211, Tables III and IV: benzoic acid against A. niger at 25 C, pKa 4.2.
describe('benzoic acid against Aspergillus niger', () => {
  const PKA = 4.2
  test('0.055 % at pH 4.2 leaves 0.027 % undissociated', () =>
    expect(Math.abs((0.055 * undissociatedShare(4.2, PKA)) / 0.027 - 1)).toBeLessThan(0.03))

  test('half of 48 inocula are stopped at 0.055 %', () => {
    const GROWN = { 0.04: 48, 0.045: 47, 0.05: 45, 0.055: 23, 0.06: 4, 0.065: 0 }
    const responses = Object.entries(GROWN).map(([level, grown]) => ({ level_percent: Number(level), grown }))
    expect(Math.abs((halfInhibited(responses, 48) ?? NaN) - 0.055)).toBeLessThan(0.002)
  })

  test('one unit of pH costs 3.5 times, not the 5.5 times of the undissociated acid alone: the ion helps', () => {
    const byAcid = undissociatedShare(4.2, PKA) / undissociatedShare(5.2, PKA)
    expect(byAcid).toBeCloseTo(5.5, 1)
    const alone = levelsAlone({ ph: 4.2, total_percent: 0.055 }, { ph: 5.2, total_percent: 0.19 }, PKA)
    const strength = (alone?.ion_alone_percent ?? NaN) / (alone?.acid_alone_percent ?? NaN)
    const withIon = acidEffect(4.2, PKA, strength) / acidEffect(5.2, PKA, strength)
    expect(Math.abs(withIon / 3.45 - 1)).toBeLessThan(0.02)
  })
})

// MARTIN (from memory, recomputed): benzoic acid between peanut oil and water in equal parts at pH 4.
test('1.74 mg/ml of benzoic acid leave 0.25 mg/ml undissociated beside as much peanut oil', () =>
  expect(
    acidInEmulsion(0.025, { ph: 4, pka: -Math.log10(6.4e-5), partition_ratio: 5.33, oil_to_water: 1 }) * 10,
  ).toBeCloseTo(1.74, 2))

// ADDBOOK, p. 733: sorbic acid at 20 C, 0.15 % at pH 3.1; at pH 5.9 it prints 1.02 %, where the ideal relation gives 2.2.
describe('the solubility of sorbic acid', () => {
  test('at pH 3.1 is 0.15 %', () => expect(Math.abs(acidSolubility(0.147, 3.1, 4.76) / 0.15 - 1)).toBeLessThan(0.06))
  test.fails('disputed: at pH 5.9 is 1.02 %', () =>
    expect(Math.abs(acidSolubility(0.147, 5.9, 4.76) / 1.02 - 1)).toBeLessThan(0.06),
  )
})
