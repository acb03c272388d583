// Writes annex-entries.tsv: which entries of Annexes II, III and V name an ingredient, as the inventory copy files it
// (derived there by exact name from the exports of December 2025). Only ids with an entry are kept.
// Usage: node import-annex-entries.mjs <cosing-inventory.tsv.gz>
import { readFileSync, writeFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'
import { slug } from './regulation-members.mjs'

const [head, ...lines] = gunzipSync(readFileSync(process.argv[2])).toString('utf8').trimEnd().split('\n')
const columns = head.split('\t')
const at = (name) => columns.indexOf(name)
const filed = new Map()
for (const line of lines) {
  const cells = line.split('\t')
  const entries = (cells[at('restriction')] ?? '').split('; ').filter(Boolean)
  const id = slug(cells[at('inci')])
  if (entries.length > 0) filed.set(id, [...new Set([...(filed.get(id) ?? []), ...entries])])
}
const rows = [...filed].sort(([a], [b]) => (a < b ? -1 : 1)).map(([id, entries]) => [id, entries.join('; ')].join('\t'))
writeFileSync(new URL('annex-entries.tsv', import.meta.url), `ingredient\tannex_entries\n${rows.join('\n')}\n`)
console.log(`${rows.length} ids with an entry`)
