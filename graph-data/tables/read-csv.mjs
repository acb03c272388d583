import { readFileSync } from 'node:fs'

/** Rows of a comma-separated file with quoted fields and one header line, as objects. */
export const readCsv = (file) => {
  const [head, ...rows] = cellsOf(readFileSync(file, 'utf8')).filter((row) => row.length > 1)
  return rows.map((row) => Object.fromEntries(head.map((name, i) => [name, (row[i] ?? '').trim()])))
}

const cellsOf = (text) => {
  const rows = [[]]
  for (const [, quoted, bare, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^,\r\n]*))(,|\r?\n|$)/g)) {
    rows.at(-1).push(quoted === undefined ? (bare ?? '') : quoted.replaceAll('""', '"'))
    if (end !== ',') rows.push([])
  }
  return rows
}
