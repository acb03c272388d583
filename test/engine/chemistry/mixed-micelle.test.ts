import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { idealCmc, micelleInteraction } from '#engine/chemistry/mixed-micelle.ts'

const mixtures = fc.record({
  cmc_1_mmol_per_l: fc.double({ min: 0.05, max: 20, noNaN: true }),
  cmc_2_mmol_per_l: fc.double({ min: 0.05, max: 20, noNaN: true }),
  mole_fraction_1: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
})

/** CMC of the mixture that belongs to a β and a micelle, straight from the relation (the other way round). */
function forward(cmc_1: number, cmc_2: number, beta: number, x: number) {
  const a = x * Math.exp(beta * (1 - x) ** 2) * cmc_1
  const b = (1 - x) * Math.exp(beta * x ** 2) * cmc_2
  return { mixed_cmc_mmol_per_l: a + b, mole_fraction_1: a / (a + b) }
}

describe('mixed micelles', () => {
  test('give back the interaction from which a mixture was made', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: -6, max: 1.5, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (cmc_1, cmc_2, beta, x) => {
          const made = forward(cmc_1, cmc_2, beta, x)
          const found = micelleInteraction({ cmc_1_mmol_per_l: cmc_1, cmc_2_mmol_per_l: cmc_2, ...made })
          expect(found.beta).toBeCloseTo(beta, 5)
          expect(found.micelle_fraction_1).toBeCloseTo(x, 5)
        },
      ),
    ))
  test('of an ideal mixture have no interaction', () =>
    fc.assert(
      fc.property(mixtures, (mixture) => {
        const ideal = idealCmc({ ...mixture, mixed_cmc_mmol_per_l: 1 })
        expect(micelleInteraction({ ...mixture, mixed_cmc_mmol_per_l: ideal }).beta).toBeCloseTo(0, 5)
      }),
    ))
  test('are the same with the two changed about', () =>
    fc.assert(
      fc.property(mixtures, (mixture) => {
        const here = { ...mixture, mixed_cmc_mmol_per_l: idealCmc({ ...mixture, mixed_cmc_mmol_per_l: 1 }) * 0.7 }
        const there = {
          ...here,
          cmc_1_mmol_per_l: here.cmc_2_mmol_per_l,
          cmc_2_mmol_per_l: here.cmc_1_mmol_per_l,
          mole_fraction_1: 1 - here.mole_fraction_1,
        }
        expect(micelleInteraction(there).beta).toBeCloseTo(micelleInteraction(here).beta, 5)
      }),
    ))
  test('that come below the ideal CMC draw together', () => {
    const mixture = { cmc_1_mmol_per_l: 1, cmc_2_mmol_per_l: 2, mole_fraction_1: 0.5, mixed_cmc_mmol_per_l: 0.8 }
    expect(micelleInteraction(mixture).beta).toBeLessThan(0)
  })
  test('cannot come where one of the two would make micelles alone', () => {
    const mixture = { cmc_1_mmol_per_l: 1, cmc_2_mmol_per_l: 2, mole_fraction_1: 0.5, mixed_cmc_mmol_per_l: 2.1 }
    expect(() => micelleInteraction(mixture)).toThrow(/^mixed_cmc_mmol_per_l/)
    expect(() => micelleInteraction({ ...mixture, mole_fraction_1: 1 })).toThrow(/^mole_fraction_1/)
  })
})
