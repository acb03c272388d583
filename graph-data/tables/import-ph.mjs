// Import of acid constants, published buffers and worked cases.
// Usage: node graph-data/tables/import-ph.mjs FOLDER (after import-long-tables.mjs, which writes sources/ph.tsv).
// Outputs are committed; nothing else reads FOLDER. What is taken and why stands in ph-choice.mjs.
// pka.tsv: one row a step of an acid or base. pka-compounds.tsv: what a mole of a salt or ingredient brings.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readCsv, writeTsv } from './csv.mjs'
import * as choice from './ph-choice.mjs'

const folder = process.argv[2]
const here = dirname(fileURLToPath(import.meta.url))
const rows = readCsv(join(folder, 'ph/pka.csv'))

// ---- constants ---------------------------------------------------------------------------------------------------
const GAS = 8.31446
const T0 = 298.15
const round = (value, digits) => Number(value.toFixed(digits))

/** Least squares of pKa(T) = pk + (dH (1/T - 1/T0) - dCp (ln T/T0 + T0/T - 1)) / (R ln 10). */
function fit(points) {
  const basis = points.map(({ temp_c }) => {
    const t = temp_c + 273.15
    return [1, (1 / t - 1 / T0) / (GAS * Math.LN10), -(Math.log(t / T0) + T0 / t - 1) / (GAS * Math.LN10)]
  })
  const normal = [0, 1, 2].map((i) => [
    ...[0, 1, 2].map((j) => basis.reduce((sum, b) => sum + b[i] * b[j], 0)),
    basis.reduce((sum, b, n) => sum + b[i] * points[n].pka, 0),
  ])
  for (let i = 0; i < 3; i++)
    for (let k = 0; k < 3; k++) {
      if (k === i) continue
      const factor = normal[k][i] / normal[i][i]
      for (let j = 0; j < 4; j++) normal[k][j] -= factor * normal[i][j]
    }
  const [pka, dh, dcp] = [0, 1, 2].map((i) => normal[i][3] / normal[i][i])
  const worst = Math.max(
    ...basis.map((b, n) => Math.abs(b[0] * pka + b[1] * dh + b[2] * dcp - points[n].pka)),
  )
  return { pka: round(pka, 3), dh: round(dh / 1000, 2), dcp: round(dcp, 0), worst: round(worst, 3) }
}

const isNumber = (text) => text !== '' && !Number.isNaN(Number(text))
const isDilute = (row) => !/^(1\.0|0\.65|0\.1 )/.test(row.ionic_strength) && row.note.indexOf('MISPRINT') < 0

/** The row of a step that is used: the preferred source, else the one marked as used, else the nearest to 25 °C. */
function chosen(acid, step, all) {
  const source = choice.PREFERRED[`${acid} ${step}`] ?? choice.PREFERRED[acid]
  const preferred = all.filter((row) => row.source_id === source)
  const used = all.filter((row) => row.use.startsWith('model'))
  const pool = [preferred, used, all.filter(isDilute), all].find((some) => some.length > 0)
  return [...pool].sort((a, b) => Math.abs(a.temp_c - 25) - Math.abs(b.temp_c - 25))[0]
}

function constantOf(acid, step, all) {
  const row = chosen(acid, step, all)
  const cited = choice.CITED[`${acid} ${step}`]
  const base = {
    acid,
    cas: row.cas,
    formula: row.formula,
    step,
    temp_c: row.temp_c === '' ? '25' : row.temp_c,
    ionic_strength: row.ionic_strength,
    source_id: cited?.[0] ?? row.source_id,
    locator: cited?.[1] ?? row.locator,
    access: row.access,
    note: [row.temp_c === '' && 'temperature not stated, taken as 25 °C', row.uncertainty && (isNumber(row.uncertainty) ? `±${row.uncertainty}` : `assessment: ${row.uncertainty}`)]
      .filter(Boolean)
      .join('; '),
  }
  if (choice.FITTED.has(`${acid} ${step}`)) {
    const same = all.filter((r) => r.source_id === row.source_id && r.locator === row.locator && isDilute(r) && isNumber(r.pka))
    const { pka, dh, dcp, worst } = fit(same.map((r) => ({ temp_c: Number(r.temp_c), pka: Number(r.pka) })))
    const range = `${Math.min(...same.map((r) => r.temp_c))} to ${Math.max(...same.map((r) => r.temp_c))} °C`
    const note = `constant, heat and heat capacity fitted to ${same.length} values from ${range}, largest miss ${worst}`
    return { ...base, temp_c: 25, pka, dh_kj_mol: dh, dcp_j_mol_k: dcp, heat_access: 'derived', note }
  }
  // Heat stands with another row of the same step where the chosen one has none.
  const warm = row.dh_kj_mol === '' ? all.find((r) => r.dh_kj_mol !== '' && r.source_id !== 'FROMM') ?? row : row
  return {
    ...base,
    pka: Number(row.pka),
    dh_kj_mol: warm.dh_kj_mol,
    dcp_j_mol_k: warm.dcp_j_mol_k,
    heat_access: warm.dh_kj_mol === '' ? '' : warm === row ? row.dh_access : `${warm.dh_access}, beside ${warm.source_id}`,
  }
}

/** Six groups of phytic acid stand in one row. */
const PHYTIC = 'phytic acid'
const phyticFirst = (row) =>
  [1, 2, 3, 4, 5, 6].map((step) => ({
    acid: PHYTIC, cas: row.cas, formula: row.formula, step: String(step), pka: 2, temp_c: 25, ionic_strength: '',
    source_id: row.source_id, locator: row.locator, access: row.access, note: 'about 2, five or six groups together',
  }))

const ORDER = ['COOH', 'alpha NH3+', 'NH3+', 'BH+', 'guanidinium']
const place = (step) => (ORDER.includes(step) ? ORDER.indexOf(step) : Number(step))
const names = [...new Set(rows.map((row) => row.acid_or_base))].filter((name) => !choice.LEFT_OUT.has(name))
const own = choice.OWN.map(({ source, dh, dcp, ...row }) => ({
  cas: rows.find((r) => r.acid_or_base === row.acid)?.cas,
  formula: rows.find((r) => r.acid_or_base === row.acid)?.formula,
  temp_c: 25,
  ...row,
  source_id: source,
  dh_kj_mol: dh,
  dcp_j_mol_k: dcp,
  heat_access: dh === undefined ? '' : 'read',
}))
const replaced = new Set(own.map(({ acid }) => acid))
const isBase = (steps) => steps.some((step) => /\+$|guanidinium/.test(step))

const constants = names
  .filter((name) => !replaced.has(name))
  .flatMap((name) => {
    const all = rows.filter((row) => row.acid_or_base === name)
    const ofAcid = all.filter((row) => isNumber(row.pka) && row.step !== 'carrier')
    const steps = [...new Set(ofAcid.map((row) => row.step))].sort((a, b) => place(a) - place(b))
    const first = name === PHYTIC ? phyticFirst(all.find((row) => row.step === '1-6')) : []
    return [...first, ...steps.map((step) => constantOf(name, step, ofAcid.filter((row) => row.step === step)))]
  })
  .concat(own)
const stepsOf = (name) => constants.filter(({ acid }) => acid === name).map(({ step }) => step)
for (const row of constants) {
  row.charge = choice.CHARGE[row.acid] ?? (isBase(stepsOf(row.acid)) ? 1 : 0)
  row.also = choice.ALSO[row.acid] ?? ''
  row.apparent = choice.APPARENT.has(row.acid) ? 'yes' : ''
  row.caution = choice.CAUTION[row.acid] ?? ''
}
const PKA = [
  ...['acid', 'also', 'cas', 'formula', 'charge', 'step', 'pka', 'temp_c', 'ionic_strength', 'apparent', 'dh_kj_mol'],
  ...['dcp_j_mol_k', 'heat_access', 'source_id', 'locator', 'access', 'caution', 'note'],
]
writeTsv(join(here, 'pka.tsv'), PKA, constants)

// ---- compounds ---------------------------------------------------------------------------------------------------
/** Standard atomic weights, from memory, to the digits that a kitchen scale can tell apart. */
const WEIGHT = {
  H: 1.008, B: 10.81, C: 12.011, N: 14.007, O: 15.999, Na: 22.99, Mg: 24.305, P: 30.974, S: 32.06, Cl: 35.45,
  K: 39.098, Ca: 40.078,
}
const massOf = (formula) =>
  formula.split('.').reduce((sum, part) => {
    const [, times, rest] = /^(\d*)(.*)$/.exec(part)
    const mass = [...rest.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce((m, [, e, n]) => m + WEIGHT[e] * Number(n || 1), 0)
    return sum + Number(times || 1) * mass
  }, 0)
const slug = (name) => name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '')
const acids = [...new Set(constants.map(({ acid }) => acid))]
const formulaOf = (acid) => constants.find((row) => row.acid === acid).formula
const compound = (name, ingredient, formula, acids_per_mol, ions_per_mol) => ({
  name, ingredient, formula, acids_per_mol, ions_per_mol, also: choice.ALSO[name] ?? '',
  molar_mass: formula ? round(massOf(formula), 3) : '',
})
writeTsv(
  join(here, 'pka-compounds.tsv'),
  ['name', 'also', 'ingredient', 'formula', 'molar_mass', 'acids_per_mol', 'ions_per_mol'],
  [
    ...acids.map((acid) => compound(acid, choice.RECORD_OF[acid] ?? slug(acid), formulaOf(acid), `${acid}*1`, '')),
    ...choice.COMPOUNDS.map((row) => compound(...row)),
  ],
)

// ---- sources and cases -------------------------------------------------------------------------------------------
const list = join(here, '../sources/ph.tsv')
const listed = readFileSync(list, 'utf8').trimEnd().split('\n').map((line) => line.split('\t'))
const [head, ...known] = listed
const kept = known.filter(([id]) => !choice.SOURCES.some(({ source_id }) => source_id === id))
writeTsv(list, head, [...kept.map((cells) => Object.fromEntries(head.map((name, i) => [name, cells[i]]))), ...choice.SOURCES])

const cases = join(here, '../../test/reference/ph')
mkdirSync(cases, { recursive: true })
for (const name of ['buffers.csv', 'adjust-cases.json', 'sources.csv'])
  writeFileSync(join(cases, name), readFileSync(join(folder, 'ph', name)))
