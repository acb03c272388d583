// Reading and writing of plain tables, shared by the import scripts.
import { readFileSync, writeFileSync } from 'node:fs'

/** Rows of a comma-separated file with quotes, as objects by column head. */
export function readCsv(path) {
  const text = readFileSync(path, 'utf8')
  const rows = []
  let row = []
  let cell = ''
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const c = text[i]
    if (quoted) {
      if (c === '"' && text[i + 1] === '"') {
        cell += '"'
        i++
      } else if (c === '"') quoted = false
      else cell += c
    } else if (c === '"') quoted = true
    else if (c === ',' || c === '\n') {
      row.push(cell)
      cell = ''
      if (c === '\n') {
        rows.push(row)
        row = []
      }
    } else if (c !== '\r') cell += c
  }
  if (cell !== '' || row.length > 0) rows.push([...row, cell])
  const [head, ...body] = rows
  return body.filter((r) => r.length > 1).map((r) => Object.fromEntries(head.map((name, i) => [name, r[i] ?? ''])))
}

/** Writes rows as tab-separated text, columns in the given order. */
export function writeTsv(path, columns, rows) {
  const clean = (value) => String(value ?? '').replace(/[\t\n\r]+/g, ' ')
  const lines = [columns, ...rows.map((row) => columns.map((column) => clean(row[column])))]
  writeFileSync(path, lines.map((line) => line.join('\t')).join('\n') + '\n')
}
