// Writes graph-data/allergens/declared.yaml from declared-allergens.csv and allergen-members.yaml (names checked by hand).
// Usage: node import-allergens.mjs <folder with the CSV file> <cosing-inventory.tsv.gz>
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'
import YAML from 'yaml'
import { readCsv } from './read-csv.mjs'
import { slug } from './regulation-members.mjs'

const [folder, inventoryFile] = process.argv.slice(2)
const here = new URL('.', import.meta.url).pathname
const names = YAML.parse(readFileSync(`${here}allergen-members.yaml`, 'utf8'))
const known = new Set(gunzipSync(readFileSync(inventoryFile)).toString('utf8').split('\n').map((line) => slug(line.split('\t')[1] ?? '')))
const BANNED_BY = { 'HYDROXYISOHEXYL 3-CYCLOHEXENE CARBOXALDEHYDE': 'eu-ii-1380', 'BUTYLPHENYL METHYLPROPIONAL': 'eu-ii-1666' }

const without = (row) => Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined && value !== ''))

const rows = readCsv(`${folder}/declared-allergens.csv`).map((row) => {
  const { instead = {}, added = [], absent = [] } = names[row.label_name] ?? {}
  const members = row.members_inci.split(';').map(slug).map((id) => instead[id] ?? id)
  const odd = [...members, ...added].filter((id) => !known.has(id) && !absent.includes(id))
  if (odd.length > 0) console.error(`${row.label_name}: not in the inventory: ${odd.join(' ')}`)
  const [source, date_source] = row.source_id.split('; ')
  return without({
    label_name: row.label_name,
    members,
    added: added.length ? added : undefined,
    status: row.status,
    leave_on_percent: row.leave_on_threshold_percent ? Number(row.leave_on_threshold_percent) : undefined,
    rinse_off_percent: row.rinse_off_threshold_percent ? Number(row.rinse_off_threshold_percent) : undefined,
    natural_complex: row.is_natural_complex === 'yes' ? true : undefined,
    applies_from: row.applies_from,
    older_stock_until: row.older_stock_available_until,
    banned_by: BANNED_BY[row.label_name],
    source, date_source, locator: row.locator, access: row.access,
  })
})

const doc = new YAML.Document({ market: 'eu', date: '2026-11-25', allergens: rows })
doc.commentBefore = ` Fragrance allergens to be named on the label when their summed share exceeds the threshold (strictly above).
 members: names of the law. added: other inventory names of the same material (own reading). Natural complexes are named
 besides the single substances they bring. status prohibited: declaring does not help, see the ban.`
YAML.visit(doc, {
  Map(_, node, path) {
    if (path.length > 3) node.flow = true
  },
})
mkdirSync(`${here}../allergens`, { recursive: true })
writeFileSync(`${here}../allergens/declared.yaml`, doc.toString({ lineWidth: 0, flowCollectionPadding: true }))
const count = (status) => rows.filter((row) => row.status === status).length
console.log(`${rows.length} allergens: ${count('current')} current, ${count('prohibited')} prohibited`)
