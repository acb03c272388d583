import type { Lint } from './lint.ts'
import { problemsIn, writtenFiles } from './walk.ts'

/** Words that stand for "no printed source"; they are shown to the reader as that. */
export const UNPRINTED = new Set(['practice', 'memory', 'inv', 'derived'])
const ACCESS = new Set(['read', 'secondary', 'memory', 'common-practice'])

/** Guards against a value whose source nobody can look up. */
export const sourceIsListed: Lint = (raw, { sources }) => {
  // One id may itself name two pages ("a; b"); else each of the parts has to be listed.
  const listed = (id: string) => UNPRINTED.has(id) || sources.has(id)
  const known = (id: string) => listed(id) || id.split(/\s*;\s*/).every(listed)
  const inRecords = problemsIn(writtenFiles(raw), ({ source, access }, report) => {
    if (typeof source === 'string' && !known(source))
      report(`${source} is in no list of sources; add it there or correct the id`)
    if (access !== undefined && !ACCESS.has(String(access))) report(`access ${String(access)} is not a known word`)
  })
  const inTables = raw.tables.flatMap((table) =>
    table.rows.flatMap((row, index) =>
      row['source_id'] === undefined || known(row['source_id'])
        ? []
        : [{ path: `${table.path}:${index + 2}`, message: `${row['source_id']} is in no list of sources` }],
    ),
  )
  return [...inRecords, ...inTables]
}
