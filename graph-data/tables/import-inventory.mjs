// Import of the open inventory of cosmetic ingredient names (European Commission, reuse under CC BY 4.0).
// Usage: node graph-data/tables/import-inventory.mjs FILE.tsv.gz. Keeps name, CAS numbers and functions.
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gunzipSync, gzipSync } from 'node:zlib'

const here = dirname(fileURLToPath(import.meta.url))
const [head, ...lines] = gunzipSync(readFileSync(process.argv[2])).toString('utf8').trimEnd().split('\n')
const columns = head.split('\t')
const at = (name) => columns.indexOf(name)
const seen = new Set()
const out = ['inci\tcas\tfunctions']
for (const line of lines) {
  const cells = line.split('\t')
  const inci = cells[at('inci')]
  if (seen.has(inci)) continue // nine names stand twice
  seen.add(inci)
  out.push([inci, cells[at('cas')], cells[at('functions')]].join('\t'))
}
writeFileSync(join(here, 'inventory.tsv.gz'), gzipSync(out.join('\n') + '\n', { level: 9 }))
console.log(`${out.length - 1} names`)
