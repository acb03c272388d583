import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'
import type { World } from '#engine/graph/world.ts'
import type { SubstanceState } from './substance.ts'
import { figuresOf } from './tables.ts'
import type { Group, LevelRow } from './tables.ts'

interface Span {
  min: number
  max: number
}

/** Whether a row can be compared with a state: acids need the pH of the medium, or a level of the acid itself. */
const usable = (row: LevelRow, state: SubstanceState): boolean =>
  !row.half &&
  row.level_percent.min !== undefined &&
  (!state.form?.needsAcidForm || row.ofAcid || (row.ph.min !== undefined && row.ph.max !== undefined))

const memo = new WeakMap<World, Map<string, ReadonlyMap<Group, GroupLevels>>>()

/** Inhibitory levels of a substance that were seen in print, by organism group. */
export function groupLevels(state: SubstanceState, world: World): ReadonlyMap<Group, GroupLevels> {
  const agent = (state.form?.acid ?? state.subject).id
  const known = memo.get(world) ?? new Map<string, ReadonlyMap<Group, GroupLevels>>()
  memo.set(world, known)
  const found = known.get(agent)
  if (found) return found
  const groups = new Map<Group, LevelRow[]>()
  for (const row of figuresOf(world).levels.get(agent) ?? []) {
    if (!usable(row, state)) continue
    for (const group of row.groups) groups.set(group, [...(groups.get(group) ?? []), row])
  }
  const levels = new Map([...groups].map(([group, rows]) => [group, { span: spanOf(rows, state), rows }]))
  known.set(agent, levels)
  return levels
}

/** Level of a row in the terms of the state: undissociated acid for acids, total free agent for all else. */
function levelOf({ level_percent, ofAcid, ph }: LevelRow, { form }: SubstanceState): Span {
  const { min = 0, max = min } = level_percent
  if (!form?.needsAcidForm || ofAcid) return { min, max }
  return {
    min: min * undissociatedShare(ph.max ?? 14, form.pka.min),
    max: max * undissociatedShare(ph.min ?? 0, form.pka.max),
  }
}

/** Levels of one organism group, in the terms of what is at work of the substance. */
export interface GroupLevels {
  /** from the most sensitive to the most resistant organism of the rows [% of the water phase] */
  span: Span
  rows: readonly LevelRow[]
}

function spanOf(rows: readonly LevelRow[], state: SubstanceState): Span {
  const spans = rows.map((row) => levelOf(row, state))
  return { min: Math.min(...spans.map(({ min }) => min)), max: Math.max(...spans.map(({ max }) => max)) }
}

/** What is at work of a state in the same terms, or null where it is not known. */
export const atWork = ({ form, free }: SubstanceState): Span | null =>
  form?.needsAcidForm ? (free?.undissociated_percent ?? null) : (free?.free_percent ?? null)

/** Most that may be at work over the lowest level of a group; null where one of the two is not known. */
export function levelReached(state: SubstanceState, levels: GroupLevels | undefined): number | null {
  const here = atWork(state)
  return levels && here && levels.span.min > 0 ? here.max / levels.span.min : null
}
