import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contentsOf } from '#engine/checks/law-content.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const scents = [...world.knowledge.compositions.keys()]
const contents = (shares: Record<string, number>) => contentsOf(buildContext(makeFormula(shares), world))

describe('what natural scents bring', () => {
  test('is share times typical range, summed over all that bring it', () => {
    // Rose 0.5 to 3.3 % and basil 0 to 4.2 % methyl eugenol in graph-data/allergens/compositions.yaml.
    const found = contents({ 'rosa-damascena-flower-oil': 0.5, 'ocimum-basilicum-oil': 0.2 }).get('methyl-eugenol')!
    expect(found.min_percent).toBeCloseTo(0.0025, 9)
    expect(found.max_percent).toBeCloseTo(0.0165 + 0.0084, 9)
    expect(found.from.map(({ subject }) => subject.id)).toEqual(['ocimum-basilicum-oil', 'rosa-damascena-flower-oil'])
  })

  test('grows with the share, and lower ends stay below upper ends', () =>
    fc.assert(
      fc.property(fc.constantFrom(...scents), fc.double({ min: 0.01, max: 20, noNaN: true }), (scent, share) => {
        const [once, twice] = [contents({ [scent]: share }), contents({ [scent]: 2 * share })]
        for (const [substance, { min_percent, max_percent }] of once) {
          expect(min_percent).toBeLessThanOrEqual(max_percent)
          expect(twice.get(substance)!.max_percent).toBeCloseTo(2 * max_percent, 9)
        }
      }),
      { numRuns: 60 },
    ))

  test('warns and never stops, since typical lots are no measurement', () =>
    fc.assert(
      fc.property(fc.constantFrom(...scents), fc.double({ min: 0.01, max: 30, noNaN: true }), (scent, share) => {
        const found = findingsOf('limit-by-content', makeFormula({ [scent]: share }, { areas: ['lip'] }))
        expect(found.map(({ severity }) => severity)).not.toContain('stop')
        for (const { message } of found) expect(message).toContain('typical lots')
      }),
      { numRuns: 80 },
    ))

  test('counts with what is in as such: citral of an oil beside citral', () => {
    // Annex III 70: 0.11 % in lip products; 0.05 % as such and 65 to 85 % of 0.1 % lemongrass.
    const [found] = findingsOf(
      'limit-by-content',
      makeFormula({ citral: 0.05, 'cymbopogon-flexuosus-oil': 0.1 }, { areas: ['lip'] }),
    )
    expect(found).toMatchObject({ severity: 'warn', about: ['citral', 'cymbopogon-flexuosus-oil'] })
    expect(found!.message).toContain('0.115 to 0.135 %')
    expect(findingsOf('limit-by-content', makeFormula({ citral: 0.05 }, { areas: ['lip'] }))).toEqual([])
  })
})
