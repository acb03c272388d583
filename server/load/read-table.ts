import { readFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'

export type Row = Record<string, string>

function rowsOf(lines: readonly (readonly string[])[]): Row[] {
  const [head = [], ...body] = lines
  return body.map((cells) => Object.fromEntries(head.map((name, index) => [name, cells[index] ?? ''])))
}

/** Cells of comma-separated text; a cell in quotes may hold commas, line ends and doubled quotes. */
function csvCells(text: string): string[][] {
  const rows: string[][] = []
  let row: string[] = []
  for (const match of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\n\r]*))(,|\r?\n|$)/g)) {
    const [whole, quoted, plain, end] = match
    if (whole === '' && row.length === 0) break
    row.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'))
    if (end === ',') continue
    rows.push(row)
    row = []
    if (end === '') break
  }
  return rows
}

/** Rows of a .tsv, .tsv.gz or .csv file as objects by column head. @throws when the file cannot be read */
export function readTable(path: string): Row[] {
  const bytes = readFileSync(path)
  const text = (path.endsWith('.gz') ? gunzipSync(bytes) : bytes).toString('utf8')
  if (path.endsWith('.csv')) return rowsOf(csvCells(text))
  return rowsOf(
    text
      .trimEnd()
      .split('\n')
      .map((line) => line.split('\t')),
  )
}
