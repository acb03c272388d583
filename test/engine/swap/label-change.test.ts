import { expect, test } from 'vitest'
import { buildLabel, findSwaps } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const declared = (formula: Formula): string[] =>
  buildLabel(world, formula)
    .allergens.filter(({ declare }) => declare)
    .map(({ name }) => name.toLowerCase())

const BALM = makeFormula(
  { 'lavandula-angustifolia-oil': 0.5, 'cera-alba': 20 },
  { fill: 'simmondsia-chinensis-seed-oil', ph: null, areas: ['body'] },
)

test('a swap says which allergens the label gains and loses, as the label itself has them', () => {
  const { swaps } = findSwaps(world, { formula: BALM, missing: ['lavandula-angustifolia-oil'], limit: 5 })
  expect(swaps.length).toBeGreaterThan(0)
  const before = declared(BALM)
  for (const { formula, changes } of swaps) {
    const after = declared(formula as Formula)
    const said = changes.find(({ kind }) => kind === 'label')?.text.toLowerCase() ?? ''
    for (const name of after.filter((one) => !before.includes(one))) expect(said).toContain(name)
    for (const name of before.filter((one) => !after.includes(one))) expect(said).toContain(name)
    if (after.every((one) => before.includes(one))) expect(said).not.toContain('to declare now')
  }
})

test('where an oil comes from is asked about and is no allergen of the list', () => {
  const formula = makeFormula({ 'helianthus-annuus-seed-oil': 80 }, { fill: 'cera-alba', ph: null, areas: ['body'] })
  const { about } = findSwaps(world, {
    formula,
    missing: ['helianthus-annuus-seed-oil'],
    about: ['prunus-amygdalus-dulcis-oil'],
  })
  const label = about?.[0]?.swap?.changes.find(({ kind }) => kind === 'label')?.text ?? ''
  expect(label).toContain('Comes from tree nut: ask about allergies')
  expect(label).not.toContain('declare')
})
