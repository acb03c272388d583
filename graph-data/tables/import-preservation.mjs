// Import of the published figures on preservatives: inhibitory levels, partition between oil and water, acid
// constants, binding to nonionic surfactants, and constants of water activity.
// Usage: node graph-data/tables/import-preservation.mjs FOLDER. Outputs are committed; nothing else reads FOLDER.
// Columns agent, property, min, max, unit, conditions, value_text, source_id, locator, access make each row a claim of
// the agent's record; the other columns are read by the engine.
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse } from 'yaml'
import { readCsv, writeTsv } from './csv.mjs'
import { PAIRS, SALTS } from './preservative-salts.mjs'

const folder = process.argv[2]
const here = dirname(fileURLToPath(import.meta.url))
const read = (name) => readCsv(join(folder, 'preservation', name))
const DATE = '2026-11-27'
const CLAIM = ['id', 'agent', 'property', 'min', 'max', 'unit', 'conditions', 'value_text', 'source_id', 'locator']
const SEEN = ['access', 'kind', 'date', 'note']

/** Handbook and textbook values stand in print, so a value that was seen is a measurement; the rest keep their access. */
const seen = (row) => ({
  source_id: row.source_id,
  locator: row.locator,
  access: row.access,
  kind: row.access === 'read' || row.access === 'secondary' ? 'measured' : '',
  date: DATE,
})
const joined = (...parts) => parts.filter((part) => part).join('; ')
const plain = (value) => (value === '' ? '' : String(Number(Number(value).toPrecision(6))))

// ---- inhibitory levels ------------------------------------------------------------------------------------------

const GROUPS = [
  ['gramPositive', /^(?:B\. |S\. aureus|S\. faecalis|L\. )|Bacillus|Staphylococcus|Clostridium|Micrococcus|Gram-positive|^bacteria/],
  ['gramNegative', /Aerobacter|Enterobacter|Escherichia|E\. coli|Klebsiella|Proteus|Pseudomonas|P\. |Salmonella|Serratia|Gram-negative|^bacteria/],
  ['yeast', /Candida|C\. albicans|Saccharomyces|yeast/],
  ['mould', /Aspergillus|A\. niger|Penicillium|Rhizopus|Trichoderma|Trichophyton|mould|fungi/],
]
const groupsOf = (organism) =>
  GROUPS.filter(([, test]) => test.test(organism))
    .map(([group]) => group)
    .join(';')

const PROPERTIES = [
  [/^MIC of undissociated/, 'inhibitory_level_of_acid'],
  [/^(?:MIC|inhibited$|inhibitory level)/, 'inhibitory_level'],
  [/^FC50/, 'half_inhibitory_level'],
  [/^lowest level that preserved/, 'preserves_lotion'],
  [/^free level in the water phase/, 'free_level_that_kept_creams'],
  [/^minimum water activity/, 'least_water_activity'],
  [/^ratio of inhibitory power/, 'acid_over_ion'],
  [/^first sampling time/, 'minutes_to_no_growth'],
  [/^log10 reduction/, 'log_reduction_in_seven_days'],
]
const propertyOf = (endpoint) => PROPERTIES.find(([test]) => test.test(endpoint))?.[1] ?? 'observation'

const TO_PERCENT = { 'ug/mL': 1e-4, 'mg/L': 1e-4, ppm: 1e-4, 'mg/100 g': 1e-3, '% w/v': 1, '% w/w': 1, '%': 1 }

/** [least, most] of "5.1-5.2", "<5", "4". */
function phOf(text) {
  if (text === '') return ['', '']
  if (text.startsWith('<')) return ['', text.slice(1)]
  const [min, max = min] = text.split('-')
  return [min, max]
}

/** Rows that are true where they stand and no typical level; the engine does not compare with them. */
const NOT_TYPICAL = new Map([['mic-029', 'a sensitive strain: the same page calls 3 to 5 mg/mL typical']])

function micRow(row) {
  const factor = TO_PERCENT[row.unit] ?? 1
  const scaled = (value) => (value === '' ? '' : plain(Number(value) * factor))
  const [ph_min, ph_max] = phOf(row.ph)
  const additive = /^with /.test(row.note) ? row.note : ''
  const medium = additive || row.medium
  const failed = row.qualifier.startsWith('not preserved')
  // A level that only bounds the true one leaves the other end open.
  const least = row.qualifier === '<=' ? '' : scaled(row.value)
  const most = row.qualifier === '>' ? '' : scaled(row.value_high || row.value)
  return {
    id: row.id,
    agent: row.agent.startsWith('(') ? '' : row.agent,
    property: propertyOf(row.endpoint),
    min: least,
    max: most,
    unit: TO_PERCENT[row.unit] ? '%' : row.unit,
    conditions: joined(`${row.organism} ${row.strain}`.trim(), row.endpoint, medium, row.ph && `pH ${row.ph}`),
    value_text: failed ? row.qualifier : row.value === '' || /grew|inhibited$/.test(row.note) ? row.note : '',
    ...seen(row),
    note: joined(row.note, NOT_TYPICAL.get(row.id)),
    organism: row.organism,
    group: groupsOf(row.organism),
    medium,
    typical: NOT_TYPICAL.has(row.id) || additive ? 'no' : 'yes',
    ph_min,
    ph_max,
    emulsifier: /^(anionic|nonionic) lotion/.exec(row.medium)?.[1] ?? '',
    printed: joined(row.value, row.value_high).replace('; ', ' to ') + (row.unit ? ` ${row.unit}` : ''),
  }
}
/** The second pH of the same printed table; it stands among the worked examples only. */
const { examples } = JSON.parse(readFileSync(join(folder, 'preservation/worked-examples.json'), 'utf8'))
const atHigherPh = examples.find(({ id }) => id === 'pres-029')
const anderson = {
  id: 'mic-d01',
  agent: 'Benzoic Acid',
  organism: 'Aspergillus niger',
  strain: '',
  endpoint: 'FC50 (half of inocula inhibited)',
  medium: '',
  ph: '5.2',
  value: String(atHigherPh.inputs['fc50_pH5.2']),
  value_high: '',
  unit: '% w/v',
  qualifier: '=',
  source_id: 'ANDERSON1967',
  locator: 'Table IV',
  access: atHigherPh.access,
  note: '',
}
const MIC = ['organism', 'group', 'medium', 'typical', 'ph_min', 'ph_max', 'emulsifier', 'printed']
writeTsv(join(here, 'mic.tsv'), [...CLAIM, ...SEEN, ...MIC], [...read('mic.csv'), anderson].map(micRow))

// ---- partition, acid constants, solubility ----------------------------------------------------------------------

const OIL_KINDS = [
  ['hydrocarbon', /Paraffinum/],
  ['ester', /Isopropyl|adipate/i],
  ['lanolin', /Lanolin/],
  ['triglyceride', / Oil$|vegetable oil/],
]
const oilKind = (oil) => (oil === '' ? '' : (OIL_KINDS.find(([, test]) => test.test(oil))?.[0] ?? 'other'))

const QUANTITIES = {
  'K oil/water': 'partition_ratio',
  'log P octanol/water': 'log_p',
  pKa: 'acid_pka',
  'solubility in water': 'water_solubility',
  'solubility in vegetable oil': 'oil_solubility',
  qualitative: 'observation',
}

function partitionRow(row) {
  const oil = row.quantity === 'K oil/water' || row.quantity === 'qualitative' ? row.oil_phase : ''
  return {
    id: row.id,
    agent: row.agent,
    property: QUANTITIES[row.quantity],
    min: plain(row.value),
    max: plain(row.value_high || row.value),
    unit: { ratio: '1', log10: '1', pH: '1' }[row.unit] ?? '%',
    conditions: joined(oil && `${oil} over water`, row.temp_c && `${row.temp_c} C`),
    value_text: row.value === '' ? row.note : '',
    ...seen(row),
    locator: row.locator || row.quantity,
    note: row.value === '' ? '' : row.note,
    oil,
    oil_kind: oilKind(oil),
    temp_c: row.temp_c,
  }
}

/** Molar masses [g/mol] of the table of constants, by name. */
const MASSES = new Map(
  readFileSync(join(here, 'physical-constants.tsv'), 'utf8')
    .split('\n')
    .map((line) => line.split('\t'))
    .filter(([, property]) => property === 'molar_mass')
    .map(([inci, , min]) => [inci, Number(min)]),
)

/** The record's own figure where it states one, else that of the table. */
function molarMass(id) {
  const { inci, facts } = parse(readFileSync(join(here, `../ingredients/${id}.yaml`), 'utf8'))
  const mass = facts.molar_mass ?? MASSES.get(inci)
  if (mass === undefined) throw new Error(`${id}: no molar mass on record`)
  return typeof mass === 'number' ? mass : mass.value
}

function saltRow([salt, acid, count], index) {
  const [ofSalt, ofAcid] = [molarMass(salt), molarMass(acid)]
  const share = plain(((count * ofAcid) / ofSalt).toPrecision(4))
  return {
    id: `sal-${String(index + 1).padStart(3, '0')}`,
    agent: salt.replaceAll('-', ' '),
    property: 'acid_form',
    min: share,
    max: share,
    unit: 'g/g',
    conditions: `as ${acid.replace(/-acid$/, ' acid')}`,
    source_id: 'DERIVED',
    locator: `${count === 1 ? '' : `${count} × `}${ofAcid} / ${ofSalt}, molar masses of the records`,
    access: 'memory',
    kind: 'derived',
    date: DATE,
    acid,
  }
}

/** No ratio of sorbic acid was found; its two solubilities at 20 C allow an estimate. */
const sorbic = {
  id: 'par-d01',
  agent: 'Sorbic Acid',
  property: 'partition_ratio',
  min: '5.3',
  max: '5.4',
  unit: '1',
  conditions: 'vegetable oil over water; 20 C',
  source_id: 'ADDBOOK',
  locator: 'p. 733: 0.8 % in oil over 0.147 to 0.15 % of undissociated acid in water',
  access: 'read',
  kind: 'derived',
  date: DATE,
  note: 'a ratio of solubilities, an estimate only',
  oil: 'vegetable oil',
  oil_kind: 'triglyceride',
  temp_c: '20',
}
writeTsv(
  join(here, 'partition.tsv'),
  [...CLAIM, ...SEEN, 'oil', 'oil_kind', 'temp_c', 'acid'],
  [...read('partition.csv').map(partitionRow), sorbic, ...SALTS.map(saltRow)],
)

// ---- binding ----------------------------------------------------------------------------------------------------

/** What a row of the collection says, by pair: who is bound (a selector), by whom, from which level, with what end. */

/** What the record of sorbic acid quotes from its handbook page. */
const handbook = {
  id: 'bin-d01',
  macromolecule: 'ethoxylated surfactants',
  quantity: 'rank',
  value: 'some loss, less than other preservatives',
  unit: '',
  concentration: '',
  source_id: 'HPE_SA',
  locator: 'drugsdose.com/sorbic-acid',
  access: 'secondary',
  note: '',
}
const bindingRows = [...read('binding.csv'), handbook].flatMap((row) =>
  (PAIRS[row.id] ?? []).map((pair, index) => ({
    id: index === 0 ? row.id : `${row.id}-${index + 1}`,
    ...pair,
    property: pair.property ?? 'outcome_with_surfactant',
    min: pair.property ? plain(row.value) : '',
    max: pair.property ? plain(row.value) : '',
    unit: pair.property ? '1/%' : '',
    conditions: joined(row.macromolecule, row.quantity, row.concentration),
    value_text: pair.property ? '' : joined(pair.outcome, pair.property ? '' : `${row.value} ${row.unit}`.trim()),
    ...seen(row),
    note: row.note,
  })),
)
writeTsv(
  join(here, 'binding.tsv'),
  [...CLAIM, ...SEEN, 'applies_to', 'surfactant', 'outcome', 'level_min', 'level_max'],
  bindingRows,
)

// ---- water activity ---------------------------------------------------------------------------------------------

const ALDITOLS = { source_id: 'NORRISH_ALDITOLS', locator: 'Table 3', access: 'read', kind: 'measured', date: DATE }
const norrish = (agent, value, index) => ({
  id: `nor-${index + 1}`,
  agent,
  property: 'norrish_constant',
  min: value,
  max: value,
  unit: '1',
  conditions: '25 C',
  ...ALDITOLS,
})
writeTsv(
  join(here, 'water-activity.tsv'),
  [...CLAIM, ...SEEN],
  Object.entries({ GLYCERIN: 1.16, ERYTHRITOL: 1.34, XYLITOL: 1.66, MANNITOL: 0.906 }).map(([agent, value], index) =>
    norrish(agent, value, index),
  ),
)

// ---- sources ----------------------------------------------------------------------------------------------------

const OWN = [
  {
    source_id: 'NORRISH_ALDITOLS',
    title: 'Physicochemical properties of alditols, Table 3 of an article in Int. J. Dent. (2010), 981072: constant of the relation between water activity and mole fractions',
    locator: 'hindawi.com/journals/ijd/2010/981072/tab3',
    note: 'Constants read from a stored copy of the table; its formula was not legible there, the form a = x·exp(-K·y²) is from memory',
  },
]
writeTsv(
  join(here, '../sources/preservation.tsv'),
  ['source_id', 'title', 'locator', 'grade', 'note'],
  [...read('sources.csv').map((row) => ({ ...row, title: row.citation, locator: row.address })), ...OWN],
)
