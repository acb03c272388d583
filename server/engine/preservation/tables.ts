import type { World } from '#engine/graph/world.ts'
import { idOf } from '#engine/knowledge/slug.ts'
import type { Claim } from '#engine/model/claim.ts'
import type { Range } from '#engine/units/range.ts'

export type Group = 'gramPositive' | 'gramNegative' | 'yeast' | 'mould'
export const GROUPS: readonly Group[] = ['gramPositive', 'gramNegative', 'yeast', 'mould']

type Row = Readonly<Record<string, string>>

/** Where a figure stands: id of its claim, source, place and how it was seen. */
export interface Cited {
  id: string
  source: string
  locator: string
  access: Claim['access']
}

export interface PartitionRow extends Cited {
  agent: string
  oil: string
  kind: string
  ratio: { min: number; max: number }
}

/** A level at which growth stops; `ph` is that of the medium. */
export interface LevelRow extends Cited {
  agent: string
  /** counted as undissociated acid, not as total */
  ofAcid: boolean
  /** half of the inocula still grew */
  half: boolean
  groups: readonly Group[]
  level_percent: Range
  ph: Range
}

/** A lotion in which a level did, or at the highest level tried did not, keep four organisms down. */
export interface LotionRow extends Cited {
  agent: string
  emulsifier: string
  ph: { min: number; max: number }
  /** null: not preserved at the highest level tried */
  level_percent: number | null
}

export interface BindingRow extends Cited {
  appliesTo: string
  surfactant: string
  /** constant of the pair [1/%], where it is known */
  binding_per_percent: number | null
  outcome: 'lost' | 'partly lost' | 'kept' | 'less affected' | null
  level: Range
}

const number = (text: string | undefined): number | undefined =>
  text === undefined || text === '' ? undefined : Number(text)

function rangeOf(min: string | undefined, max: string | undefined): Range {
  const [low, high] = [number(min), number(max)]
  return { ...(low !== undefined && { min: low }), ...(high !== undefined && { max: high }) }
}

const cited = (row: Row): Cited => ({
  id: row['id'] ?? '',
  source: row['source_id'] ?? '',
  locator: row['locator'] ?? '',
  access: (row['access'] ?? 'memory') as Claim['access'],
})

const agentOf = (row: Row): string => idOf(row['agent'] ?? '')

/** Ids made from INCI names; a table names the same few oils and agents in every row. */
function partitionRow(row: Row): PartitionRow {
  const { min = 0, max = 0 } = rangeOf(row['min'], row['max'])
  const oil = idOf(row['oil'] ?? '')
  return { ...cited(row), agent: agentOf(row), oil, kind: row['oil_kind'] ?? '', ratio: { min, max } }
}

function levelRow(row: Row): LevelRow {
  return {
    ...cited(row),
    agent: agentOf(row),
    ofAcid: row['property'] === 'inhibitory_level_of_acid',
    half: row['property'] === 'half_inhibitory_level',
    groups: (row['group'] ?? '').split(';').filter((group) => group !== '') as Group[],
    level_percent: rangeOf(row['min'], row['max']),
    ph: rangeOf(row['ph_min'], row['ph_max']),
  }
}

function lotionRow(row: Row): LotionRow {
  const { min = 0, max = 14 } = rangeOf(row['ph_min'], row['ph_max'])
  return {
    ...cited(row),
    agent: agentOf(row),
    emulsifier: row['emulsifier'] ?? '',
    ph: { min, max },
    level_percent: number(row['min']) ?? null,
  }
}

const bindingRow = (row: Row): BindingRow => ({
  ...cited(row),
  appliesTo: row['applies_to'] ?? '',
  surfactant: row['surfactant'] ?? '',
  binding_per_percent: number(row['min']) ?? null,
  outcome: (row['outcome'] || null) as BindingRow['outcome'],
  level: rangeOf(row['level_min'], row['level_max']),
})

export interface Figures {
  partitions: ReadonlyMap<string, readonly PartitionRow[]>
  logP: ReadonlyMap<string, Cited & { log_p: number }>
  /** constants of the acid as the table states them; the record's own comes on top */
  pka: ReadonlyMap<string, readonly (Cited & { pka: number })[]>
  /** salt → acid that it gives, gram of acid in a gram of salt */
  acidForms: ReadonlyMap<string, Cited & { acid: string; acid_g_per_g: number }>
  levels: ReadonlyMap<string, readonly LevelRow[]>
  lotions: readonly LotionRow[]
  bindings: readonly BindingRow[]
  /** acid → how many times stronger it is than its ion */
  acidOverIon: ReadonlyMap<string, Cited & { range: Range }>
  leastWaterActivity: readonly (Cited & { organism: string; groups: readonly Group[]; activity: number })[]
  norrish: ReadonlyMap<string, number>
}

function grouped<T extends { agent: string }>(rows: readonly T[]): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const row of rows) groups.set(row.agent, [...(groups.get(row.agent) ?? []), row])
  return groups
}

/** Only what was seen in print and is no special case may be compared with. */
const comparable = (row: Row): boolean =>
  row['typical'] === 'yes' && (row['access'] === 'read' || row['access'] === 'secondary')

function readFigures({ knowledge }: World): Figures {
  const of = (table: string, ...properties: string[]): Row[] =>
    (knowledge.tables.get(table) ?? []).filter((row) => properties.includes(row['property'] ?? ''))
  const levels = of('mic', 'inhibitory_level', 'inhibitory_level_of_acid', 'half_inhibitory_level')
  return {
    partitions: grouped(of('partition', 'partition_ratio').map(partitionRow)),
    logP: new Map(of('partition', 'log_p').map((row) => [agentOf(row), { ...cited(row), log_p: Number(row['min']) }])),
    pka: grouped(
      of('partition', 'acid_pka').map((row) => ({ ...cited(row), agent: agentOf(row), pka: Number(row['min']) })),
    ),
    acidForms: new Map(
      of('partition', 'acid_form').map((row) => [
        agentOf(row),
        { ...cited(row), acid: row['acid'] ?? '', acid_g_per_g: Number(row['min']) },
      ]),
    ),
    levels: grouped(levels.filter(comparable).map(levelRow)),
    lotions: of('mic', 'preserves_lotion').map(lotionRow),
    bindings: of('binding', 'binding_per_percent', 'outcome_with_surfactant').map(bindingRow),
    acidOverIon: new Map(
      of('mic', 'acid_over_ion').map((row) => [
        agentOf(row),
        { ...cited(row), range: rangeOf(row['min'], row['max']) },
      ]),
    ),
    leastWaterActivity: of('mic', 'least_water_activity').map((row) => ({
      ...cited(row),
      organism: row['organism'] ?? '',
      groups: levelRow(row).groups,
      activity: Number(row['min']),
    })),
    norrish: new Map(of('water-activity', 'norrish_constant').map((row) => [agentOf(row), Number(row['min'])])),
  }
}

/** Tables do not change; each world's are read once. */
const memo = new WeakMap<World, Figures>()

/** The published figures on preservatives, typed and by agent. */
export function figuresOf(world: World): Figures {
  const known = memo.get(world)
  if (known) return known
  const figures = readFigures(world)
  memo.set(world, figures)
  return figures
}
