// Import of the measured mixtures: two surfactants, a cationic polymer, a thickener, water; did they hold or separate?
// Usage: node graph-data/tables/import-surfactant-mixtures.mjs FOLDER. The output is committed; nothing else reads FOLDER.
// Terms: MIT, © 2024 Sustainable Reaction Engineering Group; the notice stands in surfactant-mixtures.LICENSE.txt.
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { writeTsv } from './csv.mjs'

const COLUMNS = [
  ...['row', 'surfactant_1', 'share_1_percent', 'surfactant_2', 'share_2_percent'],
  ...['polymer', 'material', 'polymer_percent', 'thickener', 'thickener_percent'],
  ...['held', 'turbidity_ntu', 'viscosity', 'flow', 'source_id', 'access'],
]

/** "Polyquaternium-7 (material A)": two trade materials of one name are kept apart by their letter. */
function polymerOf(text) {
  const [, name, material = ''] = /^(.*?)(?: \(material (.)\))?$/.exec(text)
  return { polymer: name.toUpperCase(), material }
}

/** @throws when a row cannot be true: a share below 0, shares above 100 together, no answer */
function checked(row) {
  const shares = [row.pct1, row.pct2, row.polymerPct, row.thickenerPct]
  const whole = shares.reduce((sum, share) => sum + share, 0)
  if (shares.some((share) => !(share > 0)) || whole >= 100) throw new Error(`row ${row.id}: shares ${shares}`)
  if (typeof row.stable !== 'boolean') throw new Error(`row ${row.id}: neither held nor separated`)
  return row
}

const { surfactantSystems: systems } = JSON.parse(
  readFileSync(join(process.argv[2], 'formulation/published-cases.json'), 'utf8'),
)
const rows = systems.rows
  .map((cells) => checked(Object.fromEntries(systems.columns.map((name, i) => [name, cells[i]]))))
  .map((row) => ({
    row: row.id,
    surfactant_1: row.surfactant1.toUpperCase(),
    share_1_percent: row.pct1,
    surfactant_2: row.surfactant2.toUpperCase(),
    share_2_percent: row.pct2,
    ...polymerOf(row.polymer),
    polymer_percent: row.polymerPct,
    thickener: row.thickener.toUpperCase(),
    thickener_percent: row.thickenerPct,
    held: row.stable ? 'yes' : 'no',
    turbidity_ntu: row.turbidityNTU,
    viscosity: row.viscosityClass?.toLowerCase(),
    flow: row.rheology?.toLowerCase(),
    source_id: systems.sourceId,
    access: systems.access,
  }))
  .sort((a, b) => a.row - b.row)
writeTsv(join(dirname(fileURLToPath(import.meta.url)), 'surfactant-mixtures.tsv'), COLUMNS, rows)
