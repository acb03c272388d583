import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'

const wash = (shares: Record<string, number>, rest: Partial<Omit<Formula, 'lines'>> = {}) =>
  makeFormula(shares, { product: 'rinse-off', ph: 5.5, hottest_c: 25, ...rest })
const compositionOf = (formula: Formula) => checkFormula(realWorld(), formula).wash

describe('composition of a wash', () => {
  test('is active matter, shared out by charge, as the bottle says it', () => {
    const formula = wash({})
    formula.lines.push(
      { ingredient: 'sodium-laureth-sulfate', share_percent: 30, strength_percent: 27 },
      { ingredient: 'cocamidopropyl-betaine', share_percent: 10, strength_percent: 30 },
      { ingredient: 'decyl-glucoside', share_percent: 4, strength_percent: 50 },
      { ingredient: 'cetrimonium-chloride', share_percent: 1, strength_percent: 29 },
    )
    // By hand: 30 x 0.27 = 8.1; 10 x 0.30 = 3; 4 x 0.5 = 2; 1 x 0.29 = 0.29; together 13.39.
    expect(compositionOf(formula)).toEqual({
      active_percent: 13.39,
      anionic_percent: 8.1,
      amphoteric_percent: 3,
      nonionic_percent: 2,
      cationic_percent: 0.29,
      strengthUnknown: [],
    })
  })

  test('a surfactant of unknown strength is named', () => {
    const { strengthUnknown } = compositionOf(wash({ 'laureth-7-citrate': 5, 'decyl-glucoside': 15 }))!
    expect(strengthUnknown).toEqual(['laureth-7-citrate'])
  })

  test('salt is no surfactant, whatever it does to a wash', () => {
    const plain = compositionOf(wash({ 'sodium-laureth-sulfate': 30 }))!
    expect(compositionOf(wash({ 'sodium-laureth-sulfate': 30, 'sodium-chloride': 2 }))).toEqual(plain)
  })

  test('a cream has none', () => {
    const cream = makeFormula({ 'helianthus-annuus-seed-oil': 15, 'cetearyl-olivate-and-sorbitan-olivate': 5 })
    expect(compositionOf(cream)).toBeUndefined()
  })
})

describe('salt', () => {
  test('thickens sulfates, up to a top that is not computed: a salt curve is advised and no viscosity promised', () => {
    const [finding] = findingsOf('salt-response', wash({ 'sodium-laureth-sulfate': 30, 'sodium-chloride': 1.5 }))
    expect(finding).toMatchObject({ severity: 'note', about: ['sodium-chloride', 'sodium-laureth-sulfate'] })
    expect(finding?.message).toMatch(/1\.5 %\) thickens .* up to a top, then thins/)
    expect(finding?.remedy).toMatch(/salt curve/)
    expect(`${finding?.message} ${finding?.remedy}`).not.toMatch(/mPa|cP/)
  })

  test('hardly thickens glucosides', () => {
    const [finding] = findingsOf('salt-response', wash({ 'decyl-glucoside': 20, 'sodium-chloride': 1.5 }))
    expect(finding?.message).toMatch(/hardly thickens Decyl glucoside/)
  })

  test('loads no formula without water', () => {
    const dry = makeFormula(
      { bentonite: 60, kaolin: 30, 'sodium-chloride': 10 },
      { fill: null, ph: null, product: 'rinse-off' },
    )
    const wet = wash({ bentonite: 6, 'sodium-chloride': 3 }, { ph: 7 })
    expect(findingsOf('electrolyte-load', dry)).toEqual([])
    expect(findingsOf('electrolyte-load', wet)).not.toEqual([])
  })
})

describe('pH of the blend', () => {
  test('an alkaline surfactant without an acid is told with the pH of its record', () => {
    const [finding] = findingsOf('alkaline-surfactant', wash({ 'decyl-glucoside': 20 }))
    // Record of decyl glucoside: decylgluc-c, pH 11.5 to 12.5 at 10 % in water (read).
    expect(finding?.message).toMatch(/Decyl glucoside comes at pH 11\.5 to 12\.5; no acid .* pH 5\.5 is not reached/)
    expect(finding?.sources).toEqual(['decylgluc-c'])
  })

  test.each([{ 'citric-acid': 0.5 }, { 'lactic-acid': 1 }])('%j takes it up', (acid) => {
    expect(findingsOf('alkaline-surfactant', wash({ 'decyl-glucoside': 20, ...acid }))).toEqual([])
  })
})

describe('washes for small children', () => {
  const baby = { areas: ['under-3' as const] }
  test.each([
    'cocamidopropyl-betaine',
    'coco-glucoside',
    'decyl-glucoside',
    'sodium-cocoamphoacetate',
    'disodium-laureth-sulfosuccinate',
  ])('%s, rinsed off, is no irritant there', (id) =>
    expect(findingsOf('irritant-here', wash({ [id]: 12 }, baby))).toEqual([]),
  )
  test.each(['sodium-lauryl-sulfate', 'ammonium-lauryl-sulfate', 'sodium-laureth-sulfate', 'sodium-coco-sulfate'])(
    '%s is',
    (id) => expect(findingsOf('irritant-here', wash({ [id]: 12 }, baby))[0]?.severity).toBe('warn'),
  )
})
