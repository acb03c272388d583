import { expect, test } from 'vitest'
import { heatIsKnown, logConstantAt } from '#engine/chemistry/ph/log-constant-at.ts'

test('at its own temperature a constant is itself', () => {
  expect(logConstantAt({ pka: 4.757, temp_c: 25, dh_kj_mol: -0.41, dcp_j_mol_k: -142 }, 25)).toBe(4.757)
})

test('heat without heat capacity is the plain law of van ’t Hoff', () => {
  // 50 kJ/mol from 25 to 35 °C by hand: 50000 / 8.31446 / ln 10 · (1/308.15 - 1/298.15) = -0.2843
  expect(logConstantAt({ pka: 9, temp_c: 25, dh_kj_mol: 50 }, 35)).toBeCloseTo(9 - 0.2843, 3)
})

// Bates and Allen, J. Res. NBS 64A (1960) 343: triethanolammonium falls 0.0197 per °C at 25 °C (from 33.450 kJ/mol).
test('an amine falls by some hundredths per degree', () => {
  const tea = { pka: 7.762, temp_c: 25, dh_kj_mol: 33.45, dcp_j_mol_k: 52 }
  expect(logConstantAt(tea, 26) - logConstantAt(tea, 25)).toBeCloseTo(-0.0196, 3)
})

test('without heat the constant stays, and that is told', () => {
  const sorbic = { pka: 4.76, temp_c: 25 }
  expect(logConstantAt(sorbic, 60)).toBe(4.76)
  expect(heatIsKnown(sorbic, 60)).toBe(false)
  expect(heatIsKnown(sorbic, 22)).toBe(true)
  expect(heatIsKnown({ ...sorbic, dh_kj_mol: 0 }, 60)).toBe(true)
})
