import { describe, expect, test } from 'vitest'
import { buildContext } from '#engine/formula/build-context.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const PE = { phenoxyethanol: 0.9, ethylhexylglycerin: 0.1 }
const FORMS: [string, string, Record<string, number>, string | null][] = [
  [
    'a cream with a complete emulsifier',
    'oil-in-water',
    { 'cetearyl-olivate-and-sorbitan-olivate': 5, 'caprylic-capric-triglyceride': 15, ...PE },
    'aqua',
  ],
  [
    'a conditioner of quat and fatty alcohol',
    'oil-in-water',
    { 'behentrimonium-chloride': 2, 'cetearyl-alcohol': 5, ...PE },
    'aqua',
  ],
  [
    'a cream held by a low-HLB emulsifier',
    'water-in-oil',
    {
      'polyglyceryl-3-diisostearate': 4,
      'caprylic-capric-triglyceride': 35,
      'cera-alba': 4,
      'magnesium-sulfate': 0.7,
      ...PE,
    },
    'aqua',
  ],
  ['a balm', 'anhydrous', { 'cera-alba': 20, 'helianthus-annuus-seed-oil': 79.5, tocopherol: 0.5 }, null],
  ['a face oil', 'anhydrous', { 'simmondsia-chinensis-seed-oil': 60, squalane: 40 }, null],
  ['a gum gel', 'gel', { 'xanthan-gum': 0.6, glycerin: 5, ...PE }, 'aqua'],
  ['a shower gel', 'wash', { 'sodium-laureth-sulfate': 30, 'cocamidopropyl-betaine': 10, ...PE }, 'aqua'],
  ['a synthetic bar', 'bar', { 'sodium-cocoyl-isethionate': 60, 'stearic-acid': 25, 'cetearyl-alcohol': 15 }, null],
  [
    'a soap out of oils and lye',
    'bar',
    { 'olea-europaea-fruit-oil': 50, 'cocos-nucifera-oil': 20, 'sodium-hydroxide': 9.7 },
    'aqua',
  ],
  ['a body powder', 'powder', { talc: 60, 'zea-mays-starch': 40 }, null],
  ['a toner', 'solution', { glycerin: 3, panthenol: 1, ...PE }, 'aqua'],
]

describe('what a formula is', () => {
  test.each(FORMS)('%s is taken for: %s', (_name, form, shares, fill) => {
    const context = buildContext(makeFormula(shares, { fill }), world)
    expect([context.form, context.formDerived]).toEqual([form, true])
  })

  test('is what its maker says, where that is said', () => {
    const context = buildContext(makeFormula({ glycerin: 3 }, { form: 'gel' }), world)
    expect([context.form, context.formDerived]).toEqual(['gel', false])
  })

  test('does not hang on the order of its lines', () => {
    for (const [, form, shares, fill] of FORMS) {
      const formula = makeFormula(shares, { fill })
      expect(buildContext({ ...formula, lines: formula.lines.toReversed() }, world).form).toBe(form)
    }
  })
})

describe('totals', () => {
  test('a filling line takes what is left', () => {
    const { lines } = buildContext(makeFormula({ glycerin: 3, panthenol: 2 }), world)
    expect(lines.map(({ share_percent }) => share_percent)).toEqual([95, 3, 2])
  })

  test('the water that a surfactant brings counts as water, its active matter as surfactant', () => {
    const { lines, water_percent, surfactant_percent } = buildContext(
      makeFormula({ 'cocamidopropyl-betaine': 50, glycerin: 50 }, { fill: null }),
      world,
    )
    expect(lines).toHaveLength(2)
    expect(surfactant_percent).toBeGreaterThan(10)
    expect(surfactant_percent).toBeLessThan(25)
    expect(water_percent).toBeCloseTo(50 - surfactant_percent, 6)
  })

  test('a stated strength of the bottle goes before the usual one', () => {
    const formula = makeFormula({ 'cocamidopropyl-betaine': 50, glycerin: 50 }, { fill: null })
    const [betaine, rest] = formula.lines
    const stated = { ...formula, lines: [{ ...betaine!, strength_percent: 46 }, rest!] }
    expect(buildContext(stated, world).surfactant_percent).toBeCloseTo(23, 9)
  })

  test('one ingredient on two lines is one substance with the sum', () => {
    const formula = makeFormula({ glycerin: 3, panthenol: 1 })
    const twice = { ...formula, lines: [...formula.lines, { ingredient: 'glycerin', share_percent: 2 }] }
    const glycerin = buildContext(twice, world).substances.filter(({ subject }) => subject.id === 'glycerin')
    expect(glycerin.map(({ share_percent }) => share_percent)).toEqual([5])
  })

  test('a blend is taken apart into its substances', () => {
    const formula = makeFormula({ 'behentrimonium-methosulfate-and-cetearyl-alcohol': 6 })
    const { substances } = buildContext(formula, world)
    const sum = substances.reduce((total, { share_percent }) => total + share_percent, 0)
    expect(sum).toBeCloseTo(100, 9)
    expect(substances.some(({ subject }) => subject.id === 'behentrimonium-methosulfate')).toBe(true)
  })
})
