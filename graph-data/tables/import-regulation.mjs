// Writes graph-data/limits/*.yaml from the rows of the law (regulation/annex-v.csv, regulation/restricted.csv), the
// hand-checked mapping in regulation/*.yaml and annex-entries.tsv. A new edition of the law: put its CSV files into
// regulation/ (or name their folder), mend the mapping, run it again; the limits are committed.
// Usage: node import-regulation.mjs [folder with the CSV files]
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'
import YAML from 'yaml'
import { membersOf, slug } from './regulation-members.mjs'
import { narrowed, rowsOf } from './regulation-rows.mjs'
import { readCsv } from './read-csv.mjs'

const here = new URL('.', import.meta.url).pathname
const folder = process.argv[2] ?? `${here}regulation`
const limitsFolder = `${here}../limits`
const SEEN_ON = '2026-11-25'
const NAMES = {
  'eu-v': 'Annex V', 'eu-iii': 'Annex III', 'eu-vi': 'Annex VI', 'eu-ii': 'Annex II', 'eu-reach': 'REACH Annex XVII',
  'eu-art': 'Regulation (EC) No 1223/2009', 'eu-sccs': 'SCCS opinion', 'us-cir': 'CIR panel conclusion',
  'us-cfr': '21 CFR', 'us-fda': 'FDA guidance', 'us-fdc': 'Federal Food, Drug, and Cosmetic Act',
}

const facts = [...readCsv(`${folder}/annex-v.csv`), ...readCsv(`${folder}/restricted.csv`)]
const linesOf = (text) => text.trimEnd().split('\n').slice(1).map((line) => line.split('\t'))
const inventory = linesOf(readFileSync(`${here}annex-entries.tsv`, 'utf8')).map(([id, entries]) => ({ id, restriction: entries.split('; ') }))
const known = new Set(linesOf(gunzipSync(readFileSync(`${here}inventory.tsv.gz`)).toString('utf8')).map(([inci]) => slug(inci)))
/** Day on which the Commission made the export that a row was read in. */
const EXPORTED = { 'S-AN2-2026': '2026-09-09', 'S-AN3-2026': '2026-09-09', 'S-AN5-2026': '2026-09-09', 'S-AN6-2026': '2026-09-09', 'S-AN2-2025': '2025-12-24', 'S-AN3-2025': '2025-12-25' }

const mapping = readdirSync(`${here}regulation`).filter((name) => name.endsWith('.yaml')).sort()
  .map((name) => YAML.parse(readFileSync(`${here}regulation/${name}`, 'utf8'), { merge: true }))
const uses = Object.assign({}, ...mapping.map(({ uses: some }) => some ?? {}))
const entries = mapping.flatMap(({ entries: some }) => Object.entries(some ?? {}))
const leftOut = Object.assign({}, ...mapping.map(({ left_out }) => left_out ?? {}))
const outsideInventory = Object.assign({}, ...mapping.map(({ not_in_inventory }) => not_in_inventory ?? {}))

/** Facts of one entry: all with its number, or those picked by `facts` (entry name) and `pick` (last two digits). */
const factsOf = (id, { facts: name = id, pick }) =>
  facts.filter(({ fact_id }) => fact_id.toLowerCase().replace(/-\d+$/, '') === name && (!pick || pick.includes(fact_id.slice(-2))))

const used = new Set()
const problems = []

const record = (id, map) => {
  const own = factsOf(id, map)
  if (own.length === 0 && !map.by_hand) problems.push(`${id}: no fact found`)
  own.forEach(({ fact_id }) => used.add(fact_id))
  const prefix = Object.keys(NAMES).filter((start) => id.startsWith(`${start}-`)).at(-1)
  const members = membersOf(own, map, inventory)
  Object.keys(members).filter((member) => !known.has(member) && !outsideInventory[member])
    .forEach((member) => problems.push(`${id}: ${member} is not in the inventory`))
  const head = {
    id: id.replaceAll('.', '-'),
    market: id.slice(0, 2),
    act: NAMES[prefix],
    entry: map.entry ?? own[0]?.entry,
    title: map.title ?? own[0]?.substance.replace(/^./, (letter) => letter.toUpperCase()),
    kind: map.kind ?? (/opinion|panel/.test(own[0]?.rule_type) ? 'opinion' : 'law'),
    basis: map.basis ?? (own.find(({ basis }) => basis)?.basis || undefined),
    members,
    member_classes: map.classes,
    members_note: map.members_note,
    requires: map.requires,
    use: map.use ?? (prefix === 'eu-v' ? 'preservative' : 'any'),
  }
  const { limits, bans } = rowsOf(own, map, { problems, uses })
  const tail = { date: map.seen_on ?? SEEN_ON, exported: EXPORTED[[...limits, ...bans][0]?.source] }
  if (limits.length === 0) return [{ ...head, rows: bans, ...tail }]
  if (bans.length === 0) return [{ ...head, rows: narrowed(limits), ...tail }]
  const banMembers = map.ban_members ? membersOf([], { members: map.ban_members }, inventory) : members
  return [
    { ...head, rows: narrowed(limits), ...tail },
    { ...head, id: `${head.id}-bans`, title: `${head.title}: where it may not be used`, basis: undefined, members: banMembers, rows: bans, ...tail },
  ]
}

const ROW_KEYS = ['scope', 'max_percent', 'strict', 'prohibited', 'ph', 'condition', 'warning', 'warning_above_percent', 'applies_from',
  'older_stock_until', 'legal_act', 'source', 'locator', 'access', 'note']
const MAP_KEYS = ['facts', 'pick', 'entry', 'title', 'kind', 'basis', 'members', 'and', 'inventory', 'except', 'classes', 'members_note', 'requires', 'use', 'rows',
  'text', 'all', 'else', 'ban', 'ban_members', 'extra', 'by_hand', 'seen_on']
const odd = (id, thing, keys) => Object.keys(thing).filter((key) => !keys.includes(key)).forEach((key) => problems.push(`${id}: unknown key ${key}`))

const records = entries.flatMap(([id, map]) => record(id, map ?? {}))
entries.forEach(([id, map]) => odd(id, map ?? {}, MAP_KEYS))
records.forEach(({ id, rows }) => rows.forEach((row) => odd(id, row, ROW_KEYS)))
facts.filter(({ fact_id }) => !used.has(fact_id) && !leftOut[fact_id]).forEach(({ fact_id }) => problems.push(`${fact_id}: not used`))
if (problems.length > 0) {
  console.error(problems.join('\n'))
  process.exitCode = 1
}

/** Keeps short maps on one line so that a record can be read at a glance. */
const written = (value) => {
  const doc = new YAML.Document(value)
  YAML.visit(doc, {
    Map(_, node, path) {
      if (path.length > 2) node.flow = node.get('source') === undefined
    },
    Seq(key, node) {
      if (node.items.every((item) => YAML.isScalar(item))) node.flow = true
    },
  })
  const members = doc.get('members')
  if (members) members.flow = members.items.length < 4
  return doc.toString({ lineWidth: 130, flowCollectionPadding: true })
}

rmSync(limitsFolder, { recursive: true, force: true })
mkdirSync(limitsFolder, { recursive: true })
records.forEach((one) => writeFileSync(`${limitsFolder}/${one.id}.yaml`, written(one)))

const lawOf = (table) => readCsv(`${folder}/${table}`).filter(({ fact_id }) => used.has(fact_id)).length
console.log(`${records.length} records, ${records.reduce((sum, { rows }) => sum + rows.length, 0)} rows; facts used: annex V ${lawOf('annex-v.csv')}, ` +
  `restricted ${lawOf('restricted.csv')}; left out on purpose: ${Object.keys(leftOut).length}`)
const live = new Set(readCsv(`${folder}/annex-v.csv`).filter(({ kind }) => kind.startsWith('limit')).map(({ entry }) => entry))
const there = new Set(records.filter(({ id }) => id.startsWith('eu-v-')).map(({ entry }) => entry))
console.log(`live Annex V entries: ${live.size}, missing: ${[...live].filter((entry) => !there.has(entry)).join(' ') || 'none'}`)
