import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { App } from '#api/routes/shared.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Label } from '#engine/model/label.ts'
import { makeFormula } from '../helpers.ts'
import { findingsOf, labelOf, startLaw } from './law-world.ts'
import type { Rest, Shares } from './law-world.ts'

let app: App
beforeAll(async () => {
  app = await startLaw()
}, 180_000)
afterAll(() => app?.close())

const label = (shares: Shares, rest: Rest = {}, placedOn?: string): Promise<Label> =>
  labelOf(app, makeFormula(shares, { areas: ['body'], ...rest }), placedOn)
const allergen = ({ allergens }: Label, name: string) => allergens.find((one) => one.name === name)
const WASH: Rest = { product: 'rinse-off' }

describe('fragrance allergens (Annex III, original 26 and the additions of (EU) 2023/1545, read)', () => {
  // Typical lavender oil holds up to 45 % of linalool (from memory): 0.004 % of it brings up to 0.0018 %.
  test('are judged by the upper end of what typical lots bring, above 0.001 % left on', async () => {
    const found = allergen(await label({ 'lavandula-angustifolia-oil': 0.004 }), 'Linalool')
    expect(found).toMatchObject({ declare: true, above_percent: 0.001, from: ['lavandula-angustifolia-oil'] })
    expect(found?.percent.max).toBeCloseTo(0.0018, 6)
  })
  test('rinsed off only above 0.01 %', async () => {
    expect(allergen(await label({ 'lavandula-angustifolia-oil': 0.02 }, WASH), 'Linalool')?.declare).toBe(false)
    expect(allergen(await label({ 'lavandula-angustifolia-oil': 0.03 }, WASH), 'Linalool')?.declare).toBe(true)
  })
  test('exactly at the threshold is not above it', async () => {
    expect(allergen(await label({ limonene: 0.001 }), 'Limonene')?.declare).toBe(false)
    expect(allergen(await label({ limonene: 0.0011 }), 'Limonene')?.declare).toBe(true)
  })
  test('of two sources are one sum', async () => {
    const found = allergen(
      await label({ limonene: 0.0006, linalool: 0.0006, 'citrus-aurantium-dulcis-peel-oil': 0.0005 }),
      'Limonene',
    )
    // 0.0006 and 0.0005 x 0.92 to 0.97 (typical sweet orange oil, from memory)
    expect(found).toMatchObject({ declare: true, from: ['citrus-aurantium-dulcis-peel-oil', 'limonene'] })
    expect(found?.percent.min).toBeCloseTo(0.00106, 6)
  })
  // Dates as quoted (secondary): undeclared goods could be placed until 31 July 2026, and sold off until 31 July 2028.
  test('of the additions bind goods placed from 1 August 2026, and the reply says how long older goods may be sold', async () => {
    const before = allergen(await label({ 'linalyl-acetate': 0.01 }, {}, '2026-07-31'), 'Linalyl Acetate')
    expect(before?.declare).toBe(false)
    expect(before?.why).toContain('from 2026-08-01')
    expect(before?.why).toContain('2028-07-31')
    expect(allergen(await label({ 'linalyl-acetate': 0.01 }, {}, '2026-08-01'), 'Linalyl Acetate')?.declare).toBe(true)
    expect(allergen(await label({ linalool: 0.01 }, {}, '2026-07-31'), 'Linalool')?.declare).toBe(true)
  })
  test('a natural complex is named besides what it brings', async () => {
    const { list } = await label({ 'lavandula-angustifolia-oil': 0.5 })
    expect(list).toContain('Lavandula Oil/Extract')
    expect(list).toContain('Linalool')
  })
  test('one that is prohibited is not cured by naming it', async () => {
    const found = await label({ 'butylphenyl-methylpropional': 0.01 })
    expect(allergen(found, 'Butylphenyl Methylpropional')?.declare).toBe(false)
    expect(found.findings.some(({ severity }) => severity === 'stop')).toBe(true)
  })
  test('of a perfume nobody can look into stay a question', async () => {
    const { findings, questions } = await label({ parfum: 0.5 })
    expect(findings).toContainEqual(
      expect.objectContaining({ rule: 'label-incomplete', severity: 'unknown', about: ['parfum'] }),
    )
    expect(questions.map(({ text }) => text).join()).toContain('Which fragrance allergens does Parfum hold')
  })
})

describe("a supplier's analysis", () => {
  const PAPER = { ingredient: 'lavandula-angustifolia-oil', holds: [{ substance: 'linalool', percent: 20 }] }
  const with_ = (analyses: Formula['analyses'], shares: Shares = { 'lavandula-angustifolia-oil': 0.004 }) =>
    label(shares, { ...(analyses && { analyses }) })

  test('takes the place of the typical range, and the reply names what it is from', async () => {
    const found = allergen(await with_([PAPER]), 'Linalool')
    expect(found).toMatchObject({ declare: false, analysed: ['lavandula-angustifolia-oil'] })
    expect(found?.percent).toEqual({ min: 0.0008, max: 0.0008 }) // 0.004 x 20 %
    expect(found?.why).toContain("by the supplier's analysis")
  })
  test('says nothing of what it does not name: there the typical range stands', async () => {
    const found = allergen(await with_([PAPER]), 'Linalyl Acetate')
    expect(found).toMatchObject({ analysed: [], declare: true })
  })
  test('that is complete leaves nothing else', async () => {
    expect(allergen(await with_([{ ...PAPER, complete: true }]), 'Linalyl Acetate')).toBeUndefined()
  })
  test('opens a perfume: complete, nothing is asked any more', async () => {
    const paper = { ingredient: 'parfum', holds: [{ substance: 'citral', percent: 2 }] }
    const open = await with_([paper], { parfum: 0.5 })
    expect(allergen(open, 'Citral')?.percent).toEqual({ min: 0.01, max: 0.01 })
    expect(open.findings.map(({ rule }) => rule)).toContain('label-incomplete')
    const whole = await with_([{ ...paper, complete: true }], { parfum: 0.5 })
    expect(whole.findings.map(({ rule }) => rule)).not.toContain('label-incomplete')
    expect(whole.list).toContain('Citral')
  })
  // Annex III, entry 102 (read): methyl eugenol at most 0.0002 % left on
  test('can stop where a typical range only warns', async () => {
    const shares = { 'ocimum-basilicum-oil': 0.1 }
    const typical = await label(shares)
    expect(typical.findings).toContainEqual(expect.objectContaining({ rule: 'limit-by-content', severity: 'warn' }))
    const paper = { ingredient: 'ocimum-basilicum-oil', holds: [{ substance: 'methyl-eugenol', percent: 1 }] }
    const found = (await with_([paper], shares)).findings
    expect(found).toContainEqual(expect.objectContaining({ rule: 'limit-by-content', severity: 'stop' }))
  })
  test('of a substance that nobody knows is refused by name', async () => {
    const paper = { ingredient: 'parfum', holds: [{ substance: 'blorpol', percent: 2 }] }
    await expect(with_([paper], { parfum: 0.5 })).rejects.toThrow('analyses/0/holds/0/substance')
  })
})

describe('order and names (Article 19(1)(g), 21 CFR 701.3)', () => {
  const SHARES = { glycerin: 1, panthenol: 0.5, allantoin: 0.9, 'ci-77491': 5, parfum: 0.3 }
  test('below 1 % the order is free in the EU, at 1 % or less in the US; colours stand last', async () => {
    const groups = async (market: 'eu' | 'us') => {
      const { positions } = await label(SHARES, { market })
      return [positions.find(({ ingredient }) => ingredient === 'glycerin')?.group, positions.at(-1)?.ingredient]
    }
    expect(await groups('eu')).toEqual(['ordered', 'ci-77491'])
    expect(await groups('us')).toEqual(['free', 'ci-77491'])
  })
  test('the EU has Aqua, Parfum and colour index numbers, the US Water, Fragrance and colour names (US names from memory)', async () => {
    const [eu, us] = [await label(SHARES), await label(SHARES, { market: 'us' })]
    expect(eu.list).toEqual(expect.arrayContaining(['Aqua', 'Parfum', 'CI 77491']))
    expect(us.list).toEqual(expect.arrayContaining(['Water', 'Fragrance', 'Iron Oxides']))
  })
  test('a powder that is sold as nano too is asked about', async () => {
    const { questions } = await label({ 'zinc-oxide': 10 })
    expect(questions.map(({ text }) => text).join()).toContain('Is Zinc Oxide a nanomaterial?')
  })
  test('a solution is listed by its substance, its water with the water', async () => {
    const { positions } = await label({ 'sodium-lactate': 5 })
    const part = positions.find(({ ingredient }) => ingredient === 'sodium-lactate')
    expect(part?.percent.max).toBeLessThan(5)
  })
})

describe('words that the law prescribes', () => {
  test('for professionals take the place of those for the public (Annex III, 2a)', async () => {
    const waving: Rest = { ...WASH, areas: ['hair'], ph: 8.5, uses: ['hair-waving'] }
    const words = async (professional: boolean) =>
      (await label({ 'thioglycolic-acid': 7 }, { ...waving, professional })).warnings
    expect(await words(true)).toEqual([
      'For professional use only',
      'Contains thioglycolate',
      'Follow the instructions',
    ])
    expect(await words(false)).toEqual([
      'Contains thioglycolate',
      'Follow the instructions',
      'Keep out of reach of children',
    ])
  })
  test('on releasers of formaldehyde stand as prescribed, with the question of how much is set free (Annex V, preamble 2)', async () => {
    const { warnings, questions } = await label({ 'dmdm-hydantoin': 0.3 })
    expect(warnings).toEqual(['releases formaldehyde'])
    expect(questions.map(({ text }) => text).join()).toContain('releases formaldehyde')
  })
  test('on talc powder for small children (Annex III, 59)', async () => {
    const { warnings } = await label(
      { talc: 95 },
      { fill: 'zea-mays-starch', form: 'powder', areas: ['under-3'], ph: null },
    )
    expect(warnings).toContain("Keep powder away from children's nose and mouth")
  })
  test('on vitamin A (Annex III, 376)', async () => {
    const { warnings } = await label({ retinol: 0.2 }, { areas: ['face'] })
    expect(warnings).toEqual(['Contains Vitamin A. Consider your daily intake before use'])
  })
  test('on peanut oil none, but the protein is limited (Annex III, 306: 0.5 ppm)', async () => {
    const { findings, warnings } = await label({ 'arachis-hypogaea-oil': 10 })
    expect(warnings).toEqual([])
    expect(findings.map(({ message }) => message).join()).toContain('Peanut protein in the material at most 0.5 ppm')
  })
})

describe('what is not covered is said', () => {
  test('the reply names the lists that were not judged, for each market', async () => {
    const lists = async (market: 'eu' | 'us') =>
      (await label({ glycerin: 3 }, { market })).notCovered.map(({ list }) => list)
    expect((await lists('eu')).join()).toMatch(/Annex IV.*Annex VI.*Hair dyes/)
    expect((await lists('us')).join()).toMatch(/Colour additives.*Drug monographs/)
  })
  test('a colour, a filter and a hair dye are unknown, never clear', async () => {
    const unknown = async (shares: Shares, rest: Rest) =>
      (await findingsOf(app, makeFormula(shares, rest)))
        .filter(({ severity }) => severity === 'unknown')
        .map(({ rule }) => rule)
    expect(await unknown({ 'ci-77491': 2 }, { areas: ['lip'] })).toContain('colour-list-unknown')
    expect(await unknown({ octocrylene: 5 }, { areas: ['face'] })).toContain('law-not-covered')
    expect(await unknown({ 'hc-yellow-no-2': 0.5 }, { areas: ['hair'] })).toContain('law-not-covered')
  })
  test('how it is dispensed is asked where a spray is barred, and no more once it is stated', async () => {
    const asks = async (rest: Rest) =>
      (await label({ 'salicylic-acid': 0.4 }, { areas: ['face'], ph: 3.8, ...rest })).questions.filter(({ text }) =>
        text.includes('spray'),
      ).length
    expect(await asks({})).toBe(1)
    expect(await asks({ dispensing: 'other' })).toBe(0)
  })
  test('a solution of unknown strength that may pass the limit is asked for its strength', async () => {
    // 15 % of a 35 % solution holds 5.25 % of peroxide, of a 3 % solution 0.45 %; Annex III, 12: 4 % on skin
    const found = await findingsOf(app, makeFormula({ 'hydrogen-peroxide': 15 }, { areas: ['body'] }))
    expect(found).toContainEqual(expect.objectContaining({ rule: 'limit-by-law', severity: 'unknown' }))
  })
})
