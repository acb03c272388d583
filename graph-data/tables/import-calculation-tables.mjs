// Import of the constants behind the textbook calculations: group numbers, coefficients of the hydrophilic-lipophilic
// deviation, and how much of an oil clears a mixture of castor and mineral oil.
// Usage: node graph-data/tables/import-calculation-tables.mjs FOLDER. Outputs are committed; nothing else reads FOLDER.
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readCsv, writeTsv } from './csv.mjs'

const folder = process.argv[2]
const here = dirname(fileURLToPath(import.meta.url))
const json = (path) => JSON.parse(readFileSync(join(folder, path), 'utf8'))

const { davies_groups } = json('emulsifiers/worked-examples.json')
const { source, access, hydrophilic, lipophilic } = davies_groups
const group = (kind) => ([name, value]) => ({ kind, name, value, source_id: source, access, note: '' })
const groups = [...Object.entries(hydrophilic).map(group('hydrophilic')), ...Object.entries(lipophilic).map(group('lipophilic'))]
for (const one of groups) {
  if (one.name === '-SO4Na') one.note = 'one copy of the table gives 38.6'
}
// The table itself ends with the groups above; textbooks add the oxyethylene unit.
groups.push({ kind: 'hydrophilic', name: '-(CH2CH2O)-', value: 0.33, source_id: 'memory', access: 'memory', note: 'added by textbooks' })
writeTsv(join(here, 'hlb-groups.tsv'), ['kind', 'name', 'value', 'source_id', 'access', 'note'], groups)

writeTsv(
  join(here, 'hld.tsv'),
  ['kind', 'name', 'value', 'unit', 'conditions', 'source_id', 'access', 'note'],
  readCsv(join(folder, 'emulsifiers/hld.csv')),
)

const { oilMiscibility } = json('formulation/published-cases.json')
const claim = (row, property, value, unit) => ({
  inci: row.inci,
  property,
  min: value,
  max: value,
  unit,
  conditions: '25 C',
  source_id: oilMiscibility.sourceId,
  locator: 'Table I',
  access: oilMiscibility.access,
  note: property === 'clears_castor_and_mineral_oil_percent' ? 'for equal parts of castor oil and mineral oil' : '',
})
// The solubility parameters of the two oils themselves stand in the heading of the table.
const ENDS = [
  { inci: 'Ricinus Communis Seed Oil', solubilityParameter: 8.9 },
  { inci: 'Paraffinum Liquidum', solubilityParameter: 7.09 },
]
writeTsv(
  join(here, 'oil-miscibility.tsv'),
  ['inci', 'property', 'min', 'max', 'unit', 'conditions', 'value_text', 'source_id', 'locator', 'access', 'note'],
  [
    ...[...ENDS, ...oilMiscibility.rows]
      .filter((row) => row.solubilityParameter !== null)
      .map((row) => claim(row, 'solubility_parameter', row.solubilityParameter, '(cal/cm3)^0.5')),
    ...oilMiscibility.rows.map((row) =>
      claim(row, 'clears_castor_and_mineral_oil_percent', row.pctToMixCastorAndMineralOil, '%'),
    ),
  ],
)
