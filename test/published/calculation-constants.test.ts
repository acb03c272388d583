import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { GRAVITY_M_PER_S2 } from '#engine/chemistry/creaming-rate.ts'
import { CONCENTRATED_SLOPE } from '#engine/chemistry/gum-viscosity.ts'
import { LIPOPHILIC_GROUP_NUMBER, OXYETHYLENE_G_PER_MOL } from '#engine/chemistry/hlb-by-structure.ts'
import { LYE_G_PER_MOL } from '#engine/chemistry/lye.ts'
import { IODINE_G_PER_MOL, KOH_MG_PER_MOL } from '#engine/chemistry/oil-constants.ts'
import { OXIDATION_WEIGHTS } from '#engine/chemistry/oxidizability.ts'
import { calculate } from '#engine/index.ts'
import { readTable } from '#load/read-table.ts'
import { realWorld } from '../helpers.ts'

const table = (name: string) =>
  readTable(fileURLToPath(new URL(`../../graph-data/tables/${name}.tsv`, import.meta.url)))
const CONSTANTS = table('calculations')
const printed = (calculation: string, relation: string): number =>
  Number(
    CONSTANTS.find((row) => row['calculation'] === calculation && row['relation'] === relation)?.['value'] ??
      Number.NaN,
  )

// Sources stand beside each value in graph-data/tables/calculations.tsv.
test.each([
  ['creaming-rate', 'acceleration of gravity', GRAVITY_M_PER_S2],
  ['gum-viscosity', 'slope of the specific viscosity over the concentration, overlapping coils', CONCENTRATED_SLOPE],
  ['hlb-by-oxyethylene', 'molar mass of oxyethylene', OXYETHYLENE_G_PER_MOL],
  ['hlb-by-groups', 'each CH, CH2, CH3 takes away', LIPOPHILIC_GROUP_NUMBER],
  ['iodine-value', 'molar mass of I2', IODINE_G_PER_MOL],
  ['saponification-value', 'molar mass of KOH', KOH_MG_PER_MOL / 1000],
  ['lye-for-soap', 'molar mass of NaOH', LYE_G_PER_MOL.naoh],
  ['oxidizability', 'weight of C18:2', OXIDATION_WEIGHTS['C18:2']],
  ['oxidizability', 'weight of C18:3', OXIDATION_WEIGHTS['C18:3']],
] as const)('%s takes the tabled %s', (calculation, relation, used) =>
  expect(used).toBe(printed(calculation, relation)),
)

describe('group numbers of davies-table', () => {
  const groups = table('hlb-groups').filter((row) => row['kind'] === 'hydrophilic')
  test.each(groups.map((row) => [row['name']!, Number(row['value'])] as const))('%s counts %d', (name, value) => {
    const { values } = calculate(realWorld(), 'hlb-by-groups', { hydrophilic: [name], lipophilic_groups: 0 })
    expect(values['hlb']).toBeCloseTo(7 + value, 12)
  })
  test('a group is found without its bonds and in small letters; an unknown one is named with the known', () => {
    const hlb = (name: string) =>
      calculate(realWorld(), 'hlb-by-groups', { hydrophilic: [name], lipophilic_groups: 12 }).values['hlb']
    expect(hlb('so4na')).toBe(hlb('-SO4Na'))
    expect(() => hlb('-OH')).toThrow(/^hydrophilic\/0: expected one of .*-OH \(free\).*got -OH/)
  })
})

// COSOL1991, Table I: the smaller the share that clears the mixture, the nearer its polarity to the best (8.7).
test('the oils near the best polarity clear castor and mineral oil with least', () => {
  const rows = table('oil-miscibility')
  const parameter = (inci: string) =>
    Number(rows.find((row) => row['inci'] === inci && row['property'] === 'solubility_parameter')?.['min'])
  const clearing = rows.filter(
    (row) => row['property'] === 'clears_castor_and_mineral_oil_percent' && !Number.isNaN(parameter(row['inci']!)),
  )
  const best = clearing.toSorted((a, b) => Number(a['min']) - Number(b['min'])).slice(0, 2)
  for (const { inci } of best) expect(Math.abs(parameter(inci!) - 8.7)).toBeLessThan(0.3)
})
