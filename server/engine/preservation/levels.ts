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

const memo = new WeakMap<World, Map<string, ReadonlyMap<Group, readonly LevelRow[]>>>()

/** Inhibitory levels of a substance that were seen in print, by organism group. */
export function groupLevels(state: SubstanceState, world: World): ReadonlyMap<Group, readonly LevelRow[]> {
  const agent = (state.form?.acid ?? state.subject).id
  const known = memo.get(world) ?? new Map<string, ReadonlyMap<Group, readonly LevelRow[]>>()
  memo.set(world, known)
  const found = known.get(agent)
  if (found) return found
  const groups = new Map<Group, LevelRow[]>()
  for (const row of figuresOf(world).levels.get(agent) ?? []) {
    if (!usable(row, state)) continue
    for (const group of row.groups) groups.set(group, [...(groups.get(group) ?? []), row])
  }
  known.set(agent, groups)
  return groups
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

/** From the most sensitive to the most resistant organism of the rows [% of the water phase]. */
export function spanOfLevels(rows: readonly LevelRow[], state: SubstanceState): Span | null {
  if (rows.length === 0) return null
  const spans = rows.map((row) => levelOf(row, state))
  return { min: Math.min(...spans.map(({ min }) => min)), max: Math.max(...spans.map(({ max }) => max)) }
}

/** What is at work of a state in the same terms, or null where it is not known. */
export const atWork = ({ form, free }: SubstanceState): Span | null =>
  form?.needsAcidForm ? (free?.undissociated_percent ?? null) : (free?.free_percent ?? null)

/** Most that may be at work over the lowest level of the rows; null where one of the two is not known. */
export function levelReached(state: SubstanceState, rows: readonly LevelRow[]): number | null {
  const [levels, here] = [spanOfLevels(rows, state), atWork(state)]
  return levels && here && levels.min > 0 ? here.max / levels.min : null
}
