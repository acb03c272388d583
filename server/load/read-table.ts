import { readFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'

export type Row = Record<string, string>

function rowsOf(lines: readonly (readonly string[])[]): Row[] {
  const [head = [], ...body] = lines
  return body.map((cells) => {
    const row: Row = {}
    for (const [index, name] of head.entries()) row[name] = cells[index] ?? ''
    return row
  })
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

/** Rows of the bytes of a .tsv, .tsv.gz or .csv file as objects by column head. */
export function tableOf(path: string, bytes: Uint8Array): Row[] {
  const text = Buffer.from(path.endsWith('.gz') ? gunzipSync(bytes) : bytes).toString('utf8')
  if (path.endsWith('.csv')) return rowsOf(csvCells(text))
  return rowsOf(
    text
      .trimEnd()
      .split('\n')
      .map((line) => line.split('\t')),
  )
}

/** Rows of a .tsv, .tsv.gz or .csv file as objects by column head. @throws when the file cannot be read */
export const readTable = (path: string): Row[] => tableOf(path, readFileSync(path))
