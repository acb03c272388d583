import { join } from 'node:path'
import { idOf } from '#engine/index.ts'
import { readTable } from '#load/read-table.ts'

/** One row of the law as it was compiled: a limit, a ban, a condition. */
export interface LawRow {
  fact: string
  market: 'eu' | 'us'
  entry: string
  type: string
  /** ids of the names in the row, in its order */
  ids: string[]
  scope: string
  detail: string
  max_percent: number | null
  max_percent_as_supplied: number | null
  ph_min: number | null
  ph_max: number | null
  conditions: string
  prohibited: string
  label: string
  applies_from: string
  access: string
}

const FOLDER = join(import.meta.dirname, '../../graph-data/tables/regulation')

const number = (text: string | undefined): number | null => (text === undefined || text === '' ? null : Number(text))

/** Words that make a name a group: "and others", "and its common salts". */
const GROUP_WORDS = / and (its|others?|related|salts)\b.*$/

const rowOf = (row: Record<string, string>): LawRow => ({
  fact: row['fact_id'] ?? '',
  market: row['jurisdiction'] === 'US' ? 'us' : 'eu',
  entry: row['entry'] ?? '',
  type: row['rule_type'] ?? row['kind'] ?? '',
  ids: (row['inci'] ?? '')
    .split(/\s*;\s*/)
    .filter(Boolean)
    .map((name) => idOf(name.replace(GROUP_WORDS, ''))),
  scope: row['product_scope'] ?? '',
  detail: row['scope_detail'] ?? '',
  max_percent: number(row['max_percent']),
  max_percent_as_supplied: number(row['max_percent_as_supplied']),
  ph_min: number(row['ph_min']),
  ph_max: number(row['ph_max']),
  conditions: row['conditions'] ?? '',
  prohibited: row['prohibited_uses'] ?? '',
  label: row['label_text'] ?? '',
  applies_from: row['applies_from'] ?? '',
  access: row['access'] ?? '',
})

/** All rows of both tables, as they were compiled. */
export const lawRows = (): LawRow[] =>
  ['annex-v.csv', 'restricted.csv'].flatMap((table) => readTable(join(FOLDER, table)).map(rowOf))
