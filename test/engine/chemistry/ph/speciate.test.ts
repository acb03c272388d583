import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apparentPkas, carriedAt, sharesAt } from '#engine/chemistry/ph/speciate.ts'

const CITRIC = { charge: 0, pkas: [3.127, 4.759, 6.397], mol_per_l: 1 }

test('one half of a one-step acid has lost its proton where pH equals pKa', () => {
  expect(carriedAt({ charge: 0, pkas: [4.76], mol_per_l: 1 }, [4.76], 4.76)).toEqual({
    charge: -0.5,
    square: 0.5,
    variance: 0.25,
  })
})

test('an amine is positive below and neutral above its constant', () => {
  const amine = { charge: 1, pkas: [9], mol_per_l: 1 }
  expect(carriedAt(amine, [9], 2).charge).toBeCloseTo(1, 6)
  expect(carriedAt(amine, [9], 14).charge).toBeCloseTo(0, 4)
})

describe('at any pH', () => {
  const pkas = fc
    .array(fc.double({ min: -2, max: 16, noNaN: true }), { maxLength: 12 })
    .map((all) => all.sort((a, b) => a - b))
  const ph = fc.double({ min: -2, max: 16, noNaN: true })

  test('the shares of all forms add up to one', () => {
    fc.assert(
      fc.property(pkas, ph, (steps, at) => {
        expect(sharesAt(steps, at).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
      }),
    )
  })
  test('the mean charge is that of the shares and falls with pH', () => {
    fc.assert(
      fc.property(pkas, ph, (steps, at) => {
        const system = { charge: 0, pkas: steps, mol_per_l: 1 }
        const { charge } = carriedAt(system, steps, at)
        const byShares = sharesAt(steps, at).reduce((sum, share, lost) => sum - share * lost, 0)
        expect(charge).toBeCloseTo(byShares, 9)
        expect(carriedAt(system, steps, at + 0.1).charge).toBeLessThanOrEqual(charge + 1e-12)
      }),
    )
  })
})

test('salt lowers the third constant of citric acid five times as much as the first', () => {
  const [first = 0, , third = 0] = apparentPkas(CITRIC, 0.1)
  // z² of base minus acid: 1 - 0 and 9 - 4; salt favours the more charged form
  expect(3.127 - first).toBeCloseTo(0.1, 12)
  expect(6.397 - third).toBeCloseTo(0.5, 12)
})

test('salt raises the constant of an amine and leaves apparent constants alone', () => {
  expect(apparentPkas({ charge: 1, pkas: [9], mol_per_l: 1 }, 0.1)[0]).toBeCloseTo(9.1, 12)
  expect(apparentPkas({ charge: 1, pkas: [5.9], mol_per_l: 1, apparent: true }, 0.1)).toEqual([5.9])
})
