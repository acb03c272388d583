import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/index.ts'
import { lyeBalance } from '#engine/checks/lye-balance.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()

describe('a preservative and its pH', () => {
  const benzoateAt = (ph: number | null) =>
    findingsOf('preservative-window', makeFormula({ 'sodium-benzoate': 0.5, glycerin: 3 }, { ph }))
  test('is at work below its upper end', () => expect(benzoateAt(4.5)).toEqual([]))
  test('is not above it', () => expect(benzoateAt(6.5)).toHaveLength(1))
  test('a pH that nobody knows is no pH inside', () => {
    const { verdict } = checkFormula(world, makeFormula({ 'sodium-benzoate': 0.5, glycerin: 3 }, { ph: null }))
    expect(verdict).toBe('not-known')
  })
})

describe('lye and fats', () => {
  const soap = (shares: Record<string, number>) =>
    buildContext(makeFormula(shares, { product: 'rinse-off', ph: 10 }), world)

  test('olive oil at 188 mg KOH/g or so binds 0.134 g of sodium hydroxide a gram', () => {
    const { superfat_percent } = lyeBalance(soap({ 'olea-europaea-fruit-oil': 70, 'sodium-hydroxide': 70 * 0.134 }))
    expect(Math.abs(superfat_percent)).toBeLessThan(3)
  })

  test('potassium hydroxide counts by its molar mass', () => {
    const fat = { 'olea-europaea-fruit-oil': 60 }
    const sodium = lyeBalance(soap({ ...fat, 'sodium-hydroxide': 7 })).superfat_percent
    const potassium = lyeBalance(soap({ ...fat, 'potassium-hydroxide': (7 * 56.106) / 39.997 })).superfat_percent
    const purity = world.find('potassium-hydroxide')!.facts.get('active_percent')
    if (purity === undefined) expect(potassium).toBeCloseTo(sodium, 3)
    else expect(potassium).toBeGreaterThan(sodium)
  })

  test('lye without enough fat stops the formula', () => {
    const formula = makeFormula(
      { 'olea-europaea-fruit-oil': 60, 'sodium-hydroxide': 10 },
      { product: 'rinse-off', ph: 11 },
    )
    expect(findingsOf('lye-balance', formula).map(({ severity }) => severity)).toEqual(['stop'])
  })

  test('a fat of unknown saponification value never makes the balance hold', () => {
    const formula = makeFormula(
      { 'simmondsia-chinensis-seed-oil': 40, 'sodium-hydroxide': 8 },
      { product: 'rinse-off', ph: 11 },
    )
    const known = world.find('simmondsia-chinensis-seed-oil')!.facts.has('saponification_value')
    const findings = findingsOf('lye-balance', formula)
    expect(findings.map(({ severity }) => severity)).toEqual([known ? 'stop' : 'unknown'])
  })
})

describe('heat', () => {
  const at = (phase: 'oil' | 'cool-down') => {
    const cream = { 'cetearyl-olivate-and-sorbitan-olivate': 5, 'caprylic-capric-triglyceride': 15, retinol: 0.1 }
    const formula = makeFormula(cream, { hottest_c: 80 })
    const lines = formula.lines.map((line) => (line.ingredient === 'retinol' ? { ...line, phase } : line))
    return findingsOf('heat-too-hot', { ...formula, lines }).map(({ about }) => about)
  }
  test('destroys what is melted in', () => expect(at('oil')).toEqual([['retinol']]))
  test('leaves alone what goes into the cool-down phase', () => expect(at('cool-down')).toEqual([]))
})

describe('verdict', () => {
  test('the gravest finding decides', () => {
    const verdict = (phenoxyethanol: number, ph: number | null) =>
      checkFormula(world, makeFormula({ phenoxyethanol, 'sodium-benzoate': 0.4, glycerin: 3 }, { ph, areas: ['body'] }))
        .verdict
    expect(verdict(1.5, null)).toBe('stop')
    expect(verdict(0.8, null)).toBe('not-known')
  })
})

describe('levels', () => {
  test('are judged on the sum of all lines of an ingredient', () => {
    const formula = makeFormula({ 'xanthan-gum': 3, glycerin: 3 })
    const twice = { ...formula, lines: [...formula.lines, { ingredient: 'xanthan-gum', share_percent: 3 }] }
    expect(findingsOf('level-high', twice).map(({ severity }) => severity)).toEqual(['warn'])
  })
})
