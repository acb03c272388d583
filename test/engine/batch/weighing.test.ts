import { describe, expect, test } from 'vitest'
import { makeFormula } from '../../helpers.ts'
import { saysOf, sheetFor, sheetNamed, sheetOf, weighed } from './sheet.ts'

describe('small lines', () => {
  test('a line under ten steps is warned of, with a stock, a batch and a scale that help', () => {
    // 0.2 % of 100 g is 0.2 g: 2 steps of 0.1 g. A 10 % solution of it: 2 g, in which are 0.2 g and 1.8 g water.
    const sheet = sheetFor({ 'citric-acid': 0.2, glycerin: 3 }, { hottest_c: 25 })
    const remark = sheet.remarks.find(({ lines }) => lines.includes('citric-acid'))!
    expect(remark).toMatchObject({ kind: 'line-too-small', severity: 'warn' })
    expect(remark.message).toMatch(/0.4 g is 4 steps/)
    expect(remark.dilution).toEqual({
      ...{ strength_percent: 10, carrier: 'aqua', pure_g: 1, carrier_g: 9 },
      ...{ take_g: 4, less_carrier_g: 3.6 },
    })
    expect(remark.remedy).toMatch(/Make a 10 % solution in Aqua: 1 g and 9 g. Take 4 g of it and 3.6 g less of Aqua/)
    expect(remark.remedy).toMatch(/or make 500 g and more, or weigh on a scale of 0.01 g/)
  })
  test('what only oil dissolves is diluted in the oil of the recipe', () => {
    const sheet = sheetNamed('lip-balm', { batch_g: 100 })
    const remark = sheet.remarks.find(({ lines }) => lines.includes('tocopherol'))!
    expect(remark.dilution!.carrier).toBe('ricinus-communis-seed-oil')
  })
  test('a thickener is no 10 % solution: it is made a 1 % gel', () => {
    const remark = sheetNamed('light-face-cream').remarks.find(({ lines }) => lines.includes('xanthan-gum'))!
    expect(remark.dilution!.strength_percent).toBe(1)
    expect(remark.remedy).toMatch(/1 % stock gel in Aqua/)
  })
  test('a booster is mixed with its preservative in the ratio of the recipe', () => {
    const remark = sheetNamed('light-face-cream').remarks.find(({ lines }) => lines.includes('ethylhexylglycerin'))!
    expect(remark.dilution).toEqual({
      ...{ strength_percent: 10, carrier: 'phenoxyethanol', pure_g: 1, carrier_g: 9 },
      ...{ take_g: 2, less_carrier_g: 1.8 },
    })
  })
  test('what dissolves less than a stock would hold is not sent into one', () => {
    // Allantoin: about half a gram in 100 g of water (a trader's note), so 10 % and 1 % stay grains and 0.1 % is too much.
    const sheet = sheetFor({ allantoin: 0.2, glycerin: 3 }, { hottest_c: 25 })
    const remark = sheet.remarks.find(({ lines }) => lines.includes('allantoin'))!
    expect(remark.dilution).toBeUndefined()
    expect(remark.remedy).toMatch(/or make 500 g and more/)
  })
  test('a stock larger than the batch is not advised', () => {
    const sheet = sheetFor({ squalane: 99.7, retinol: 0.3 }, { fill: null, ph: null, hottest_c: 25 })
    const remark = sheet.remarks.find(({ lines }) => lines.includes('retinol'))!
    expect(remark.message).toMatch(/0.6 g is 6 steps/)
    expect(remark.dilution!.pure_g + remark.dilution!.carrier_g).toBeLessThanOrEqual(200)
  })
  test('a line that the scale cannot show at all is not left out in silence', () => {
    const sheet = sheetFor({ 'citric-acid': 0.01 }, { hottest_c: 25 })
    expect(weighed(sheet, 'citric-acid')).toBe(0)
    expect(saysOf(sheet, 'line-is-zero')[0]).toMatch(/0.02 g is less than half a step/)
  })
  test('none is warned of on a scale that is fine enough', () =>
    expect(sheetNamed('light-face-cream', { step_g: 0.01 }).remarks.filter(({ kind }) => /line/.test(kind))).toEqual(
      [],
    ))
})

describe('one ingredient in two phases', () => {
  const formula = makeFormula({
    'cetearyl-olivate-and-sorbitan-olivate': 5,
    'caprylic-capric-triglyceride': 12,
    urea: 3,
  })
  const sheet = sheetOf({
    ...formula,
    lines: [...formula.lines, { ingredient: 'aqua', share_percent: 5, phase: 'cool-down' }],
  })
  const waters = sheet.lines.filter(({ ingredient }) => ingredient === 'aqua')
  test('is two lines with keys of their own, each where the recipe puts it', () => {
    expect(waters.map(({ line, weigh_g }) => [line, weigh_g]).sort()).toEqual([
      ['aqua', 10],
      ['aqua/2', 150],
    ])
    expect(waters.find(({ line }) => line === 'aqua')!.portions).toEqual([{ step: 'cool-down', weigh_g: 10 }])
  })
  test('still adds up', () => expect(sheet.lines.reduce((sum, { weigh_g }) => sum + weigh_g, 0)).toBeCloseTo(200, 9))
})

describe('the size of the batch', () => {
  test('that is no whole number of steps is rounded and said', () => {
    const sheet = sheetNamed('light-face-cream', { batch_g: 99.96 })
    expect(sheet.weighed_g).toBe(100)
    expect(saysOf(sheet, 'batch-rounded')[0]).toMatch(/99.96 g is no whole number of scale steps of 0.1 g/)
  })
  test('with overage is larger, and the sheet says both figures', () => {
    const sheet = sheetNamed('light-face-cream', { overage_percent: 5 })
    expect([sheet.batch_g, sheet.weighed_g, sheet.overage_percent]).toEqual([200, 210, 5])
    expect(weighed(sheet, 'glycerin')).toBe(8.4)
  })
  test('less than one step of the scale is refused', () => {
    expect(() => sheetNamed('light-face-cream', { batch_g: 0.04 })).toThrow(/batch_g: expected at least one step/)
    expect(() => sheetNamed('light-face-cream', { batch_g: 2_000_000 })).toThrow(RangeError)
    expect(() => sheetNamed('light-face-cream', { step_g: 0 })).toThrow(/step_g/)
    expect(() => sheetNamed('light-face-cream', { overage_percent: -1 })).toThrow(/overage_percent/)
  })
  test('shares that are a little off 100 are scaled, and that is said', () => {
    const sheet = sheetFor({ aqua: 96.96, glycerin: 3 }, { fill: null, hottest_c: 25 })
    expect(sheet.weighed_g).toBe(200)
    expect(saysOf(sheet, 'shares-scaled')[0]).toMatch(/99.96 %/)
  })
})

describe('cost', () => {
  const prices_per_kg = { aqua: 1, glycerin: 8, 'xanthan-gum': 40 }
  test('is the sum of what is known; what is missing is named and makes the total unknown', () => {
    const { cost } = sheetNamed('light-face-cream', { prices_per_kg, currency: 'EUR' })
    // 143.4 g water at 1, 8 g glycerin at 8, 0.6 g gum at 40 a kilogram
    expect(cost).toMatchObject({ currency: 'EUR', known: 0.2314, total: null, per_100_g: null, unused: [] })
    expect(cost!.missing).toContain('phenoxyethanol')
    expect(cost!.missing).not.toContain('glycerin')
  })
  test('is whole when every price is known; a price of nothing is a price', () => {
    const { cost } = sheetFor({ glycerin: 10 }, { hottest_c: 25 })
    expect(cost).toBeNull()
    const own = sheetNamed('micellar-water', {
      prices_per_kg: Object.fromEntries(sheetNamed('micellar-water').lines.map(({ ingredient }) => [ingredient, 0])),
    })
    expect(own.cost).toMatchObject({ known: 0, total: 0, missing: [], currency: null })
  })
  test('takes an alias for its record, and names a price that no line asks for', () => {
    const { cost, lines } = sheetNamed('light-face-cream', { prices_per_kg: { water: 2, retinol: 900 } })
    expect(lines.find(({ ingredient }) => ingredient === 'aqua')!.cost).toBe(0.2868)
    expect(cost!.unused).toEqual(['retinol'])
  })
})

describe('the day of making', () => {
  test('comes from the caller, and gives the days of looking at it again', () => {
    const sheet = sheetNamed('light-face-cream', { date: '2026-12-25', batchCode: 'C-7' })
    expect(sheet.looks.map(({ day, date }) => [day, date])).toEqual([
      [1, '2026-12-26'],
      [7, '2027-01-01'],
      [30, '2027-01-24'],
    ])
    expect(sheet.steps.find(({ id }) => id === 'mark')!.text).toMatch(/Made on 2026-12-25.*code C-7/)
  })
  test('that is not given leaves lines to be written on', () => {
    const sheet = sheetNamed('light-face-cream')
    expect([sheet.date, sheet.batchCode]).toEqual([null, null])
    expect(sheet.looks.map(({ day, date }) => [day, date])).toEqual([
      [1, undefined],
      [7, undefined],
      [30, undefined],
    ])
  })
})
