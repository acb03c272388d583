import type { Claim } from '#engine/model/records.ts'
import type { RawTable } from './raw.ts'
import { idOf } from './slug.ts'

const ACCESS_ORDER = ['read', 'secondary', 'memory', 'common-practice']
const KIND_ORDER = ['standard-range', 'typical', 'study-range', 'single-sample']

/** Mid-points scaled to 100 %: the ranges of a standard add up to 96 to 114 %. */
function scaled(rows: Record<string, string>[]): Record<string, number> {
  const middles = rows.map(
    (row) => [row['fatty_acid'] ?? '', (Number(row['min_pct']) + Number(row['max_pct'])) / 2] as const,
  )
  const total = middles.reduce((sum, [, share]) => sum + share, 0)
  return Object.fromEntries(middles.map(([acid, share]) => [acid, (share / total) * 100]))
}

/** One profile a source and oil; the best kind of source first. */
export function fattyAcidClaims(tables: readonly RawTable[]): Map<string, Claim[]> {
  const table = tables.find((t) => t.path.endsWith('fatty-acids.tsv'))
  const groups = new Map<string, Record<string, string>[]>()
  for (const row of table?.rows ?? []) {
    const key = `${idOf(row['inci'] ?? '')}|${row['source_id']}`
    groups.set(key, [...(groups.get(key) ?? []), row])
  }
  const out = new Map<string, Claim[]>()
  const rank = (rows: Record<string, string>[]) =>
    KIND_ORDER.indexOf(rows[0]?.['kind'] ?? '') * 10 + ACCESS_ORDER.indexOf(rows[0]?.['access'] ?? '')
  for (const [key, rows] of [...groups].sort((a, b) => rank(a[1]) - rank(b[1]) || (a[0] < b[0] ? -1 : 1))) {
    const id = key.split('|')[0] ?? ''
    const claims = out.get(id) ?? []
    claims.push({
      id: `${id}#fatty_acids/${rows[0]?.['source_id']}`,
      property: 'fatty_acids',
      shares: scaled(rows),
      unit: '%',
      kind: rows[0]?.['kind'] === 'single-sample' ? 'measured' : 'assertion',
      source: rows[0]?.['source_id'] ?? '',
      locator: `${rows[0]?.['oil']}, ${rows[0]?.['kind']}, mid-points scaled to 100 %`,
      access: rows[0]?.['access'] as Claim['access'],
      date: '2026-11-25',
      used: claims.length === 0,
    })
    out.set(id, claims)
  }
  return out
}
