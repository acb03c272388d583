import { ACCESS_ORDER } from '#engine/model/access.ts'
import type { Claim } from '#engine/model/records.ts'
import type { RawTable } from './raw.ts'
import { idOf } from './slug.ts'

type Row = Record<string, string>

const KIND_ORDER = ['standard-range', 'typical', 'typical-range', 'study-range', 'single-sample', 'study-maximum']

/** Below this the mid-points name only part of the oil; scaling them up would invent the rest. */
const LEAST_TOTAL_PERCENT = 88
/** A source that names less leaves acids out, mostly the saturated ones; other sources fill them in where they can. */
const WHOLE_PERCENT = 95

const place = (order: readonly string[], word: string | undefined): number => {
  const index = order.indexOf(word ?? '')
  return index < 0 ? order.length : index
}

/** One standard stands under several source ids: re-typed, remembered or amended rows belong together. */
const family = (source: string): string => source.replace(/-(retyped|copy|mem|\d{4}-amend)$/, '')

const middle = (row: Row): number => (Number(row['min_pct']) + Number(row['max_pct'])) / 2

interface Group {
  oil: string
  rows: Map<string, Row>
  /** lower is better */
  rank: number
}

const total = ({ rows }: Group): number => [...rows.values()].reduce((sum, row) => sum + middle(row), 0)

/** Rows of one oil in one family of sources; an amendment overrides the row that it amends. */
function groupsOf(rows: readonly Row[]): Group[] {
  const groups = new Map<string, Group>()
  for (const row of rows) {
    const key = `${row['oil']}|${family(row['source_id'] ?? '')}`
    const group = groups.get(key) ?? {
      oil: row['oil'] ?? '',
      rows: new Map<string, Row>(),
      rank: place(KIND_ORDER, row['kind']) * 10 + place(ACCESS_ORDER, row['access']),
    }
    const acid = row['fatty_acid'] ?? ''
    const known = group.rows.get(acid)
    if (!known || row['source_id']?.endsWith('-amend')) group.rows.set(acid, row)
    groups.set(key, group)
  }
  return [...groups.values()].sort((a, b) => a.rank - b.rank || total(b) - total(a))
}

/** Partial sources of one oil put together, the better source first for each acid. */
function together(groups: readonly Group[]): Group {
  const rows = new Map<string, Row>()
  for (const group of groups) for (const [acid, row] of group.rows) if (!rows.has(acid)) rows.set(acid, row)
  return { oil: groups[0]?.oil ?? '', rows, rank: groups[0]?.rank ?? 99 }
}

function claimOf(id: string, group: Group, index: number): Claim {
  const sum = total(group)
  const rows = [...group.rows.values()]
  const sources = [...new Set(rows.map((row) => row['source_id'] ?? ''))].sort()
  const kinds = [...new Set(rows.map((row) => row['kind'] ?? ''))].join(', ')
  const worst = Math.max(...rows.map((row) => place(ACCESS_ORDER, row['access'])))
  return {
    id: `${id}#fatty_acids/${index}`,
    property: 'fatty_acids',
    shares: Object.fromEntries([...group.rows].map(([acid, row]) => [acid, (middle(row) / sum) * 100])),
    unit: '%',
    kind: kinds === 'single-sample' ? 'measured' : 'assertion',
    source: sources.join('; '),
    locator: `${group.oil}: ${kinds}, mid-points (together ${sum.toFixed(0)} %) scaled to 100 %`,
    access: (ACCESS_ORDER[worst] ?? 'memory') as Claim['access'],
    date: '2026-11-25',
    used: false,
  }
}

/** The oil that bears the name without a grade: "sunflower oil", not "sunflower oil, high oleic". */
const isMainOil = (oil: string, oils: readonly string[]): boolean =>
  !oil.includes(',') || oils.every((other) => other.includes(','))

/** Profiles of the fatty-acid tables by ingredient id; the one used comes first and is complete. */
export function fattyAcidClaims(tables: readonly RawTable[]): Map<string, Claim[]> {
  const rows = tables.find((table) => table.path.endsWith('fatty-acids.tsv'))?.rows ?? []
  const byId = new Map<string, Row[]>()
  for (const row of rows) {
    const id = idOf(row['inci'] ?? '')
    byId.set(id, [...(byId.get(id) ?? []), row])
  }
  return new Map(
    [...byId].map(([id, own]) => {
      const oils = [...new Set(own.map((row) => row['oil'] ?? ''))]
      const groups = groupsOf(own.filter((row) => isMainOil(row['oil'] ?? '', oils)))
      const complete = groups.filter((group) => total(group) >= WHOLE_PERCENT)
      const usable =
        complete.length > 0 ? complete : [together(groups)].filter((group) => total(group) >= LEAST_TOTAL_PERCENT)
      return [id, usable.map((group, index) => ({ ...claimOf(id, group, index), used: index === 0 }))] as const
    }),
  )
}
