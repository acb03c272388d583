import { describe, expect, test } from 'vitest'
import { findSwaps } from '#engine/index.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const WEAK_ACIDS = ['potassium-sorbate', 'sodium-benzoate', 'potassium-benzoate', 'benzoic-acid', 'sorbic-acid']
const BASES = {
  gel: { glycerin: 4, 'xanthan-gum': 0.5 },
  cream: { 'cetearyl-olivate-and-sorbitan-olivate': 5, 'caprylic-capric-triglyceride': 15, glycerin: 3 },
}
const AGENTS = [
  { 'sodium-benzoate': 0.4, phenoxyethanol: 0.8 },
  { phenoxyethanol: 0.9, ethylhexylglycerin: 0.1 },
]

const cases = Object.entries(BASES).flatMap(([base, shares]) =>
  [5.5, 6, 6.5, 7].flatMap((ph) =>
    AGENTS.map((agents) => ({ base, ph, shares, agents, missing: Object.keys(agents)[0]! })),
  ),
)

describe.each(cases)('in a $base at pH $ph, in place of $missing', ({ ph, shares, agents, missing }) => {
  test('a weak acid is no good stand-in where hardly any of it is undissociated', () => {
    const { swaps } = findSwaps(world, {
      formula: makeFormula({ ...shares, ...agents }, { ph }),
      missing: [missing],
      limit: 60,
    })
    const asItIs = swaps.filter(
      ({ lines, formula }) => formula?.ph === ph && lines.some(({ ingredient }) => WEAK_ACIDS.includes(ingredient)),
    )
    expect(asItIs.filter(({ grade }) => grade === 'good')).toEqual([])
    if (ph > 5.7) expect(asItIs).toEqual([])
  })
})
