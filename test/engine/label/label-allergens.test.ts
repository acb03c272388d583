import { describe, expect, test } from 'vitest'
import { buildLabel } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const allergen = (name: string, shares: Record<string, number>, rest: Partial<Formula> = {}, placedOn?: string) =>
  buildLabel(world, makeFormula(shares, rest), placedOn).allergens.find((one) => one.name === name)
const declared = (name: string, shares: Record<string, number>, rest: Partial<Formula> = {}, placedOn?: string) =>
  allergen(name, shares, rest, placedOn)?.declare

describe('thresholds: 0.001 % in what stays on, 0.01 % in what is rinsed off (Annex III, entries of the allergens)', () => {
  const RINSED = { product: 'rinse-off' as const }
  test('declared strictly above', () => {
    expect(declared('Linalool', { linalool: 0.001 })).toBe(false)
    expect(declared('Linalool', { linalool: 0.0011 })).toBe(true)
    expect(declared('Linalool', { linalool: 0.01 }, RINSED)).toBe(false)
    expect(declared('Linalool', { linalool: 0.011 }, RINSED)).toBe(true)
  })
  test('a group counts its members together', () => {
    expect(allergen('Citral', { citral: 0.0006, geranial: 0.0003, neral: 0.0003 })).toMatchObject({
      declare: true,
      percent: { min: 0.0012, max: 0.0012 },
      from: ['citral', 'geranial', 'neral'],
    })
  })
})

describe('what essential oils bring', () => {
  test('is a range, and all sources are added up', () => {
    // Lavender 20 to 45 %, sweet orange 0.1 to 0.7 % linalool: typical lots, from memory (graph-data/allergens).
    expect(
      allergen('Linalool', { 'lavandula-angustifolia-oil': 1, 'citrus-aurantium-dulcis-peel-oil': 1, linalool: 0.1 }),
    ).toMatchObject({
      percent: { min: 0.301, max: 0.557 },
      from: ['citrus-aurantium-dulcis-peel-oil', 'lavandula-angustifolia-oil', 'linalool'],
    })
  })
  test('is judged by its upper end, and the supplier may know less', () => {
    const found = allergen('Coumarin', { 'lavandula-angustifolia-oil': 1.5 }) // up to 0.1 % of the oil
    expect(found).toMatchObject({ declare: true, percent: { min: 0, max: 0.0015 } })
    expect(found!.why).toContain("supplier's analysis")
  })
  test('a natural complex is named by the law besides what it brings', () => {
    const shares = { 'cananga-odorata-flower-oil': 0.2 }
    expect(declared('Cananga Odorata Oil/Extract', shares)).toBe(true)
    expect(declared('Benzyl Salicylate', shares)).toBe(true)
    expect(declared('Isoeugenol', shares)).toBe(true)
  })
  test('of a hydrosol counts too', () => expect(declared('Geraniol', { 'rosa-damascena-flower-water': 60 })).toBe(true))
})

describe('days of (EU) 2023/1545', () => {
  test('an allergen added in 2023 is due for goods placed from 1 August 2026, one of the first 26 before', () => {
    const shares = { 'mentha-piperita-oil': 0.5 }
    expect(declared('Menthol', shares, {}, '2026-07-31')).toBe(false)
    expect(declared('Menthol', shares, {}, '2026-08-01')).toBe(true)
    expect(declared('Limonene', shares, {}, '2026-07-31')).toBe(true)
    expect(allergen('Menthol', shares, {}, '2026-07-31')!.why).toContain('2028-07-31')
  })
  test('without a day the state of the list counts', () => expect(declared('Menthol', { menthol: 0.1 })).toBe(true))
})

describe('what declaring does not cure', () => {
  test('a banned allergen is not declared, and the ban is found', () => {
    const label = buildLabel(world, makeFormula({ 'butylphenyl-methylpropional': 0.1 }))
    expect(label.allergens).toMatchObject([{ name: 'Butylphenyl Methylpropional', declare: false }])
    expect(label.findings.some(({ severity }) => severity === 'stop')).toBe(true)
  })
})

test('in the US no list is on record: sums are shown, nothing is decided, and that is said', () => {
  const label = buildLabel(world, makeFormula({ linalool: 0.5 }, { market: 'us' }))
  expect(label.allergens).toMatchObject([{ name: 'Linalool', declare: false }])
  expect(label.findings).toContainEqual(expect.objectContaining({ rule: 'label-incomplete', severity: 'unknown' }))
})
