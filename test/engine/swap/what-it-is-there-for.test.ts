import { describe, expect, test } from 'vitest'
import { findSwaps, standIns } from '#engine/index.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

type Shares = Parameters<typeof makeFormula>[0]
type Rest = NonNullable<Parameters<typeof makeFormula>[1]>

const swapsOf = (shares: Shares, rest: Rest, missing: string) =>
  findSwaps(realWorld(), { formula: makeFormula(shares, rest), missing: [missing], limit: 6 }).swaps
const offered = (swaps: ReturnType<typeof swapsOf>) =>
  swaps.flatMap(({ lines }) => lines.map((line) => line.ingredient))

// A maker's sheet gives neutralised carbomers 60 % alcohol with triethanolamine, taurate copolymers 50 %.
describe('a gel of strong alcohol', () => {
  const swaps = swapsOf(
    { alcohol: 73, glycerin: 1.5, carbomer: 0.3, triethanolamine: 0.2 },
    { areas: ['hand'], ph: 7, hottest_c: 25 },
    'carbomer',
  )
  test('what bears less alcohol than there is is no good stand-in, even where the missing one bore it no better', () => {
    const warned = swaps.filter(({ findings }) => findings.some(({ rule }) => rule === 'alcohol-tolerance'))
    expect(warned.length).toBeGreaterThan(0)
    expect(warned.map(({ grade }) => grade)).toEqual(warned.map(() => 'workable'))
  })
})

describe('the job is the one that is done here', () => {
  test('beeswax beside stearic acid and an amine is a wax: the acid makes the soap', () => {
    const mascara = { 'cera-alba': 8, 'stearic-acid': 4, triethanolamine: 1.5, 'ci-77499': 10, 'acacia-senegal-gum': 3 }
    const swaps = swapsOf(mascara, { areas: ['eye'], ph: 7.5, hottest_c: 80 }, 'cera-alba')
    expect(swaps[0]!.role).toBe('wax')
    expect(offered(swaps)).toContain('synthetic-beeswax')
  })
  test('beeswax beside borax alone is the acid half of the soap', () => {
    const cream = { 'cera-alba': 14, 'paraffinum-liquidum': 48, 'sodium-borate': 0.8 }
    const [swap] = findSwaps(realWorld(), {
      formula: makeFormula(cream, { ph: 8.5, hottest_c: 75 }),
      missing: ['cera-alba'],
    }).roles
    expect(JSON.stringify(swap)).toContain('soap-emulsifier')
  })
  test('a glucoside in a watery wash without oil washes, and emulsifies nothing', () => {
    const water = { 'peg-6-caprylic-capric-glycerides': 2, 'coco-glucoside': 1, glycerin: 3, 'sodium-benzoate': 0.4 }
    const swaps = swapsOf(water, { areas: ['face'], ph: 5, hottest_c: 25 }, 'coco-glucoside')
    expect(offered(swaps)[0]).toBe('decyl-glucoside')
    expect(offered(swaps)).not.toContain('sorbitan-oleate')
  })
})

describe('a colour', () => {
  const lipstick = { 'ricinus-communis-seed-oil': 60, 'euphorbia-cerifera-cera': 12, mica: 7.5, tocopherol: 0.5 }
  const on = (market: 'eu' | 'us'): Rest => ({ market, areas: ['lip'], ph: null, hottest_c: 85, fill: null })
  test('a lake for an iron oxide is said to be of another kind and strength', () => {
    const swaps = swapsOf({ ...lipstick, 'ci-77491': 20 }, on('eu'), 'ci-77491')
    const lake = swaps.find(({ lines }) => lines.some(({ ingredient }) => ingredient === 'ci-15850'))!
    expect(lake.why).toMatch(/differs in chemical family/)
    expect(lake.changes.map(({ text }) => text).join()).toMatch(/begin with a third/)
  })
  // 21 CFR 74.2336: at most 3 % in lip products (the agency's list, read)
  test('is dosed within what the law allows on lips', () => {
    const swaps = swapsOf({ ...lipstick, 'ci-15850': 20 }, on('us'), 'ci-15850')
    const lines = swaps.flatMap((swap) => swap.lines).filter(({ ingredient }) => ingredient === 'ci-12085')
    expect(lines.every(({ share_percent }) => share_percent! <= 3)).toBe(true)
  })
})

describe('what a thing is there for', () => {
  const lotion = {
    'cetearyl-alcohol-and-cetearyl-glucoside': 5,
    'caprylic-capric-triglyceride': 8,
    'phenoxyethanol-and-ethylhexylglycerin': 1,
  }
  test('decides: a self-tanner is answered with a self-tanner and with nothing else', () => {
    const swaps = swapsOf(
      { ...lotion, dihydroxyacetone: 5 },
      { areas: ['body'], ph: 4, hottest_c: 75 },
      'dihydroxyacetone',
    )
    expect(offered(swaps)).toEqual(['erythrulose'])
    const general = standIns(realWorld(), 'dihydroxyacetone').swaps
    expect(general.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient))).toEqual(['erythrulose'])
  })
  test('an oil of another odour may scent it too, and is no good stand-in', () => {
    const swaps = swapsOf(
      { ...lotion, 'mentha-piperita-oil': 0.3 },
      { areas: ['body'], ph: 5, hottest_c: 75 },
      'mentha-piperita-oil',
    )
    expect(swaps.filter(({ grade }) => grade === 'good').length).toBeGreaterThan(0)
    for (const { grade, scores } of swaps) if (scores['odour'] === 0) expect(grade).toBe('workable')
  })
  test('counts for each of several stand-ins', () => {
    const scented = { ...lotion, 'mentha-piperita-oil': 0.3, glycerin: 4 }
    const { swaps } = findSwaps(realWorld(), {
      formula: makeFormula(scented, { areas: ['body'], ph: 5, hottest_c: 75 }),
      missing: ['mentha-piperita-oil', 'glycerin'],
      limit: 12,
    })
    const minty = (id: string) => realWorld().find(id)?.classes.has('mint') === true
    expect(swaps.length).toBeGreaterThan(0)
    for (const { grade, lines } of swaps)
      if (!lines.some(({ ingredient }) => minty(ingredient))) expect(grade).toBe('workable')
  })
})
