import { describe, expect, test } from 'vitest'
import { buildLabel } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const label = (formula: Formula, placedOn?: string) => buildLabel(world, formula, placedOn)
const listOf = (shares: Record<string, number>, rest: Partial<Formula> = {}) => label(makeFormula(shares, rest)).list
const place = (shares: Record<string, number>, name: string, rest: Partial<Formula> = {}) =>
  label(makeFormula(shares, rest)).positions.find((one) => one.name === name)

describe('the list of ingredients', () => {
  test('goes down by mass, then what is below 1 %, then colours', () => {
    const shares = {
      glycerin: 3,
      'xanthan-gum': 0.3,
      'ci-77491': 2,
      'caprylic-capric-triglyceride': 12,
      phenoxyethanol: 0.9,
    }
    expect(listOf(shares)).toEqual([
      'Aqua',
      'Caprylic/Capric Triglyceride',
      'Glycerin',
      'Phenoxyethanol',
      'Xanthan Gum',
      'CI 77491',
    ])
  })
  test('in the EU 1 % itself is in the order, in the US it is free', () => {
    expect(place({ glycerin: 1 }, 'Glycerin')).toMatchObject({ group: 'ordered' })
    expect(place({ glycerin: 0.99 }, 'Glycerin')).toMatchObject({ group: 'free' })
    expect(place({ glycerin: 1 }, 'Glycerin', { market: 'us' })).toMatchObject({ group: 'free' })
    expect(place({ glycerin: 1.01 }, 'Glycerin', { market: 'us' })).toMatchObject({ group: 'ordered' })
  })
  test('takes a blend apart by its shares', () => {
    // Cetearyl olivate and sorbitan olivate: 60 to 40 in the record.
    const shares = { 'cetearyl-olivate-and-sorbitan-olivate': 5 }
    expect(place(shares, 'Cetearyl Olivate')).toMatchObject({ percent: { min: 3, max: 3 } })
    expect(place(shares, 'Sorbitan Olivate')).toMatchObject({ percent: { min: 2, max: 2 } })
  })
  test('puts the water of a solution to the water', () => {
    const wash = { ...makeFormula({}), lines: [] as Formula['lines'] }
    wash.lines = [
      { ingredient: 'aqua', share_percent: 60 },
      { ingredient: 'coco-glucoside', share_percent: 40, strength_percent: 50 },
    ]
    const { positions } = label(wash)
    expect(positions.map(({ name, percent }) => [name, percent.max])).toEqual([
      ['Aqua', 80],
      ['Coco-Glucoside', 20],
    ])
    expect(positions[0]!.from).toEqual(['aqua', 'coco-glucoside'])
  })
  test('names once what stands twice', () => {
    const formula = makeFormula({ glycerin: 2 })
    const twice = { ...formula, lines: [...formula.lines, { ingredient: 'glycerin', share_percent: 1.5 }] }
    expect(label(twice).positions.filter(({ name }) => name === 'Glycerin')).toMatchObject([{ percent: { max: 3.5 } }])
  })
  test('says which neighbours could change places where shares are not known', () => {
    const found = place({ 'glycerin-and-urea': 4 }, 'Glycerin')
    expect(found).toMatchObject({ percent: { min: 0, max: 4 } })
    expect(found!.why).toContain('could change places with Urea')
  })
  test('in the US has English names and no allergens of the EU', () => {
    const us = { market: 'us' as const }
    expect(listOf({ 'lavandula-angustifolia-oil': 0.5, 'cera-alba': 4, parfum: 0.2 }, us)).toEqual([
      'Water',
      'Beeswax',
      'Lavandula Angustifolia (Lavender) Oil',
      'Fragrance',
    ])
  })
  test('several oils that the law gives one name are one position', () => {
    const shares = { 'lavandula-angustifolia-oil': 0.4, 'lavandula-hybrida-oil': 0.3 }
    expect(place(shares, 'Lavandula Oil/Extract')).toMatchObject({
      percent: { min: 0.7, max: 0.7 },
      from: ['lavandula-angustifolia-oil', 'lavandula-hybrida-oil'],
    })
  })
})

describe('questions', () => {
  const texts = (formula: Formula) =>
    label(formula)
      .questions.map(({ text }) => text)
      .join('\n')
  test('a perfume asks for its allergens and leaves the label unknown', () => {
    const formula = makeFormula({ parfum: 0.3 })
    expect(texts(formula)).toContain('Which fragrance allergens does Parfum hold')
    expect(label(formula).findings).toContainEqual(
      expect.objectContaining({ severity: 'unknown', about: ['parfum'], rule: 'label-incomplete' }),
    )
  })
  test('an oil without a composition on record asks too', () => {
    const unknown = 'artemisia-pallens-flower-oil'
    expect(world.find(unknown)).not.toBeNull()
    expect(texts(makeFormula({ [unknown]: 0.3 }))).toContain('Which fragrance allergens does Artemisia Pallens')
  })
  test('an oil of which the composition is on record does not', () =>
    expect(texts(makeFormula({ 'lavandula-angustifolia-oil': 0.3 }))).not.toContain('Which fragrance allergens'))
  test('a powder that is sold as nano asks in the EU', () => {
    expect(texts(makeFormula({ 'titanium-dioxide': 5 }))).toContain('[nano]')
    expect(texts(makeFormula({ 'titanium-dioxide': 5 }, { market: 'us' }))).not.toContain('[nano]')
  })
  test('every label asks who is responsible, what it weighs, how long it keeps and for the batch', () => {
    for (const words of ['responsible person', 'when packed', 'best-before', 'batch number']) {
      expect(texts(makeFormula({ glycerin: 3 }))).toContain(words)
    }
  })
  test('a drop of lye in a cream is no soap', () =>
    expect(texts(makeFormula({ 'olea-europaea-fruit-oil': 20, 'sodium-hydroxide': 0.1 }))).not.toContain(
      'name the soap',
    ))
  test('soap asks by what it is named', () =>
    expect(
      texts(makeFormula({ 'olea-europaea-fruit-oil': 60, 'sodium-hydroxide': 8 }, { product: 'rinse-off' })),
    ).toContain('name the soap'))
})

describe('words that the law prescribes', () => {
  const warnings = (shares: Record<string, number>, rest: Partial<Formula> = {}) =>
    label(makeFormula(shares, rest)).warnings
  // Annex III 376, Annex V 54 and preamble 2: label texts as in graph-data/tables/regulation/*.csv.
  test('vitamin A', () =>
    expect(warnings({ retinol: 0.1 }, { areas: ['face'] })).toEqual([
      'Contains Vitamin A. Consider your daily intake before use',
    ]))
  test('benzalkonium', () => expect(warnings({ 'benzalkonium-chloride': 0.1 })).toEqual(['Avoid contact with eyes']))
  test('formaldehyde, where more than 10 ppm could be set free', () => {
    expect(warnings({ 'dmdm-hydantoin': 0.3 })).toEqual(['releases formaldehyde'])
    expect(warnings({ 'dmdm-hydantoin': 0.002 })).toEqual([])
  })
  test('words with a threshold of their own are due above it', () => {
    expect(warnings({ ammonia: 1.5 })).toEqual([])
    expect(warnings({ ammonia: 2.5 })).toEqual(['Contains ammonia'])
  })
  test('words for a use that nobody stated are asked, not printed', () => {
    const nails = makeFormula({ 'potassium-hydroxide': 3 }, { areas: ['nail'], ph: 12.5, product: 'rinse-off' })
    expect(label(nails).warnings).toEqual([])
    expect(
      label(nails)
        .questions.map(({ text }) => text)
        .join('\n'),
    ).toContain('Contains alkali')
  })
  test('none without cause', () => expect(warnings({ glycerin: 5 })).toEqual([]))
})

test('a label never says that it is in order', () => {
  const { findings, questions } = label(makeFormula({ glycerin: 3, parfum: 0.2 }))
  const words = [...findings.map(({ message }) => message), ...questions.map(({ text, why }) => `${text} ${why}`)].join(
    ' ',
  )
  expect(words).not.toMatch(/compliant|certified|is safe|approved/i)
})
