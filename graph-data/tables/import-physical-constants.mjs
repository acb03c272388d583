// Import of molar masses, melting and boiling points of defined substances, found by CAS number.
// Usage: node graph-data/tables/import-physical-constants.mjs FOLDER [RECORDS]
// RECORDS is another folder of records than ../ingredients (an older state that still held a figure of its own).
// FOLDER is the unpacked open package `chemicals` (1.5.2, MIT licence, from the Python package index). It carries
// figures of the CRC Handbook, of PubChem (public domain) and of the Open Notebook collection (public domain); each is
// cited as a single fact, seen in this copy and not in the handbook itself: access secondary.
// What is taken: molar mass where the record's own figure agrees within three per mille or the handbook has the
// substance; melting and boiling point of what the handbook has. Other hydrates, polymers and mixtures fall out so.
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import YAML from 'yaml'
import { writeTsv } from './csv.mjs'

const folder = process.argv[2]
const here = dirname(fileURLToPath(import.meta.url))
const recordsFolder = process.argv[3] ?? join(here, '../ingredients')
/** Rows taken before: a record gives its own figure up once a row confirms it, and the row has to stay. */
function takenBefore() {
  try {
    const rows = readFileSync(join(here, 'physical-constants.tsv'), 'utf8').split('\n').map((line) => line.split('\t'))
    return new Set(rows.map((cells) => `${cells[0]} ${cells[1]} ${/CAS ([\d-]+)/.exec(cells[8])?.[1]}`))
  } catch {
    return new Set()
  }
}
const taken = takenBefore()
const COLUMNS = ['inci', 'property', 'min', 'max', 'unit', 'conditions', 'value_text', 'source_id', 'locator', 'access', 'kind', 'date', 'note']
const SEEN_ON = '2026-11-27'

const lines = (path) => readFileSync(join(folder, path), 'utf8').trimEnd().split(/\r?\n/)
function byCas(path) {
  const [head, ...rows] = lines(path).map((line) => line.split('\t'))
  return new Map(rows.map((cells) => [cells[0], Object.fromEntries(head.map((name, at) => [name, cells[at] ?? '']))]))
}
const organic = byCas('Misc/Physical Constants of Organic Compounds.csv')
const inorganic = byCas('Misc/Physical Constants of Inorganic Compounds.csv')
const notebook = byCas('Phase Change/OpenNotebook Melting Points.tsv')
const compounds = new Map(
  ['pubchem large', 'pubchem small'].flatMap((name) =>
    lines(`Identifiers/chemical identifiers ${name}.tsv`).map((line) => {
      const [, cas, formula, molar_mass] = line.split('\t')
      return [cas, { formula, molar_mass: Number(molar_mass) }]
    }),
  ),
)

/** Rows of the package that do not agree with the formula of the substance named by the CAS number. */
const WRONG = new Set([
  '38841-48-4', // disodium 2-sulfolaurate as a singly charged ion
  '1847-58-1', // sodium lauryl sulfoacetate as a cation
  '133-37-9', // racemic tartaric acid; sold is the dextrorotatory one
])
/** Names of polymers, technical mixtures and minerals of changing make: one molecule does not stand for them. */
const NO_MOLECULE = /poly|copolymer|peg|ppg|cellulose|gum|agar|starch|extract|-oil|dextr|chitosan|clay|zeolite|talc|kaolin|colloidal|^ci-|cocoyl|cocoamph/

const celsius = (kelvin) => (kelvin === '' || kelvin === undefined ? undefined : Number((Number(kelvin) - 273.15).toFixed(1)))
const numberOf = (fact) => (typeof fact === 'number' ? fact : typeof fact?.value === 'number' ? fact.value : undefined)
const near = (a, b, share) => Math.abs(a / b - 1) <= share

function claimsOf(record) {
  const inci = record.inci
  const cas = record.cas ?? []
  const row = (property, value, unit, source_id, locator, kind) => ({
    inci, property, min: value, max: value, unit, source_id, locator, access: 'secondary', kind, date: SEEN_ON,
  })
  const own = numberOf(record.facts?.molar_mass)
  const handbook = cas.find((one) => !WRONG.has(one) && (organic.has(one) || inorganic.has(one)))
  const rows = []
  const isOne = (one) => compounds.has(one) && !WRONG.has(one)
  const molecule =
    own === undefined
      ? (cas.find((one) => taken.has(`${inci} molar_mass ${one}`)) ?? (handbook !== undefined && isOne(handbook) ? handbook : undefined))
      : cas.find((one) => isOne(one) && near(compounds.get(one).molar_mass, own, 0.003))
  if (molecule !== undefined) {
    const { formula, molar_mass } = compounds.get(molecule)
    rows.push(row('molar_mass', Number(molar_mass.toFixed(2)), 'g/mol', 'pubchem-formula', `CAS ${molecule}, ${formula}`, 'derived'))
  }
  if (handbook === undefined) return rows
  const found = organic.get(handbook) ?? inorganic.get(handbook)
  const melting = celsius(found.Tm) ?? celsius(notebook.get(handbook)?.Tm)
  const origin = celsius(found.Tm) === undefined ? 'open-notebook-melting' : 'crc-constants-copy'
  // A liquid whose pure substance is solid is sold dissolved, supercooled or as another isomer; some figures are slips.
  const suits = record.form === 'liquid' ? melting <= 26 : !['solid', 'powder'].includes(record.form) || melting >= 20
  const known = record.facts?.melting_c !== undefined || taken.has(`${inci} melting_c ${handbook}`)
  if (melting !== undefined && !suits && !known) console.log(`${record.id}: ${record.form}, handbook ${melting} C, left out`)
  else if (melting !== undefined) rows.push(row('melting_c', melting, 'C', origin, `CAS ${handbook}`, 'measured'))
  const boiling = celsius(found.Tb)
  if (boiling !== undefined) rows.push(row('boiling_c', boiling, 'C', 'crc-constants-copy', `CAS ${handbook}`, 'measured'))
  return rows
}

const records = readdirSync(recordsFolder)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => YAML.parse(readFileSync(join(recordsFolder, name), 'utf8')))
const rows = records.filter(({ id, made_of }) => !made_of && !NO_MOLECULE.test(id)).flatMap(claimsOf)
writeTsv(join(here, 'physical-constants.tsv'), COLUMNS, rows)
writeTsv(
  join(here, '../sources/physical-constants.tsv'),
  ['source_id', 'title', 'locator', 'grade', 'note'],
  [
    { source_id: 'crc-constants-copy', title: 'W. M. Haynes (ed.), CRC Handbook of Chemistry and Physics, 95th edition (2014), physical constants of organic and inorganic compounds', locator: 'as carried by the open package chemicals 1.5.2 (github.com/CalebBell/chemicals, MIT licence)', grade: 'A', note: 'Seen in this copy, not in the handbook; melting points are those of the pure substance, trade grades melt lower and over a range' },
    { source_id: 'open-notebook-melting', title: 'Open Notebook Science melting point collection (J.-C. Bradley and others), public domain', locator: 'as carried by the open package chemicals 1.5.2', grade: 'B', note: 'Seen in this copy' },
    { source_id: 'pubchem-formula', title: 'PubChem, formula of the compound with this CAS number; molar mass by standard atomic weights', locator: 'as carried by the open package chemicals 1.5.2', grade: 'A', note: 'Public domain; taken only where the record or the handbook names the same compound' },
  ],
)
console.log(`${rows.length} rows of ${new Set(rows.map(({ inci }) => inci)).size} substances`)
