// Import of the published values on windows, oils, emulsifiers, surfactants and melting points.
// Usage: node graph-data/tables/import-long-tables.mjs FOLDER. Outputs are committed; nothing else reads FOLDER.
// Every output row is one claim: inci, property, min, max, unit, conditions, value_text, source_id, locator, access, note.
import { mkdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readCsv, writeTsv } from './csv.mjs'
import { rowForReaders, sourceForReaders } from './for-readers.mjs'

const folder = process.argv[2]
const here = dirname(fileURLToPath(import.meta.url))
const COLUMNS = [
  'inci',
  'property',
  'min',
  'max',
  'unit',
  'conditions',
  'value_text',
  'source_id',
  'locator',
  'access',
  'note',
]
const read = (path) => readCsv(join(folder, path))
const write = (name, rows) => writeTsv(join(here, `${name}.tsv`), COLUMNS, rows.map(rowForReaders))
const split = (inci) => inci.split(/\s*;\s*/).join(' + ')

/**
 * Rows from memory or practice that only repeat what every record says by its roles, its classes and its phase: role in
 * the collectors' own words, charge and phase in one word of the vocabulary, and that who is no formaldehyde releaser
 * releases none. What was read, or says more, is kept.
 */
const CHARGES = ['anionic', 'cationic', 'amphoteric', 'nonionic']
const PHASES = ['water', 'oil', 'powder', 'cool-down', 'either']
const repeatsRecord = ({ property, value_text, access }) =>
  (access === 'memory' || access === 'common-practice') &&
  (property === 'role' ||
    (property === 'releases_formaldehyde' && value_text === 'no') ||
    (property === 'charge' && CHARGES.includes(value_text)) ||
    (property === 'phase' && PHASES.includes(value_text)))

for (const name of ['structure', 'preservatives', 'actives']) {
  write(
    `windows-${name}`,
    read(`windows/${name}.csv`).filter((r) => !r.inci.startsWith('rule:') && !repeatsRecord(r)),
  )
}
write('surfactants', read('surfactants/surfactants.csv'))
/** "sunflower oil, high oleic" is a grade with figures of its own; low erucic rapeseed oil is the usual one. */
const gradeOf = (oil) => (oil.includes(',') && !oil.endsWith('low erucic') ? `grade ${oil.split(', ')[1]}` : '')
const conditionsOf = (r) => [gradeOf(r.oil), r.conditions].filter(Boolean).join('; ')
write(
  'oil-constants',
  read('oils/constants.csv')
    .filter((r) => r.inci)
    .map((r) => ({ ...r, conditions: conditionsOf(r), locator: r.oil })),
)
write(
  'hlb',
  read('emulsifiers/hlb.csv').map((r) => ({ ...r, property: 'hlb', min: r.hlb_min, max: r.hlb_max, unit: '1' })),
)
write(
  'required-hlb',
  read('oils/required-hlb.csv')
    .filter((r) => r.inci)
    .map((r) => ({
      ...r,
      property: r.emulsion_type === 'O/W' ? 'required_hlb' : 'required_hlb_water_in_oil',
      min: r.required_hlb_min,
      max: r.required_hlb_max,
      unit: '1',
    })),
)
write(
  'melting-points',
  read('melting-points.csv')
    .filter((r) => r.inci)
    .map((r) => ({
      ...r,
      inci: split(r.inci),
      // Single crystal forms are no melting range of the fat as supplied.
      property: /crystal|form/i.test(r.kind) ? 'melting_of_crystal_form_c' : 'melting_c',
      min: r.min_c,
      max: r.max_c,
      unit: 'C',
      conditions: r.kind,
      locator: r.material,
    })),
)
writeTsv(
  join(here, 'fatty-acids.tsv'),
  ['oil', 'inci', 'fatty_acid', 'min_pct', 'max_pct', 'source_id', 'access', 'kind'],
  read('oils/fatty-acids.csv'),
)

mkdirSync(join(here, '../sources'), { recursive: true })
const SOURCE_COLUMNS = ['source_id', 'title', 'locator', 'grade', 'note']
const SOURCES = {
  oils: 'sources.csv',
  'windows-structure': 'windows/structure-sources.csv',
  'windows-preservatives': 'windows/preservatives-sources.csv',
  'windows-actives': 'windows/actives-sources.csv',
}
/** Sources of rows that are no claim about an ingredient and are not taken over. */
const NOT_TAKEN = new Set(['jcs2020-rhlb', 'petursson2002', 'tga-beeswax-alcohols', 'earth-hyd', 'ct-aw'])
for (const [name, path] of Object.entries(SOURCES)) {
  writeTsv(
    join(here, `../sources/${name}.tsv`),
    SOURCE_COLUMNS,
    read(path)
      .filter((r) => !NOT_TAKEN.has(r.source_id))
      .map(sourceForReaders),
  )
}

// Lists of sources that are written in other columns: one citation and one address a row.
const CITED = { ph: 'ph/sources.csv' }
for (const [name, path] of Object.entries(CITED)) {
  const rows = read(path).map((r) => ({ ...r, title: r.citation, locator: r.address }))
  writeTsv(join(here, `../sources/${name}.tsv`), SOURCE_COLUMNS, rows.map(sourceForReaders))
}
const published = JSON.parse(readFileSync(join(folder, 'formulation/published-cases.json'), 'utf8'))
const formulation = Object.entries(published.sources).map(([source_id, title]) => ({ source_id, title }))
writeTsv(join(here, '../sources/formulation.tsv'), SOURCE_COLUMNS, formulation)
