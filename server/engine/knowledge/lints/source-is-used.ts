import type { RawData } from '#engine/knowledge/raw.ts'
import type { Lint } from './lint.ts'
import { objectsOf } from './walk.ts'

/** Notes name further sources in running text: "Second source: S-1." */
const namedIn = (text: string): string[] => text.match(/[A-Za-z][A-Za-z0-9_-]+/g) ?? []

function citedIn(raw: RawData): Set<string> {
  const cited = new Set<string>()
  const cite = (text: unknown): void => {
    if (typeof text !== 'string') return
    cited.add(text)
    for (const part of text.split(/\s*;\s*/)) cited.add(part)
  }
  for (const file of [...raw.ingredients, ...raw.limits, ...raw.rules, ...raw.allergens, raw.clashes]) {
    for (const { object } of objectsOf(file)) {
      cite(object['source'])
      cite(object['date_source'])
      if (typeof object['note'] === 'string') for (const word of namedIn(object['note'])) cited.add(word)
    }
  }
  for (const { rows } of raw.tables) for (const row of rows) cite(row['source_id'])
  return cited
}

/** Guards against sources that nothing cites: a list that only grows tells nobody what the data rest on. */
export const sourceIsUsed: Lint = (raw) => {
  const cited = citedIn(raw)
  return raw.sources.flatMap(({ path, rows }) =>
    rows
      .map((row) => row['source_id'] ?? '')
      .filter((id) => !cited.has(id))
      .map((id) => ({ path: `${path}/${id}`, message: `nothing cites ${id}` })),
  )
}
