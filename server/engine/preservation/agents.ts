import type { FormulaContext } from '#engine/formula/context.ts'
import { plays } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { PlaysRole } from '#engine/model/records.ts'

/** A preserving ingredient of a formula with its share as supplied. */
export interface Entry {
  subject: Subject
  /** [% of the formula] */
  share_percent: number
  /** ids of the single lines that together are this usual blend; empty for a line of its own */
  joinedFrom: readonly string[]
}

export const preserves = (subject: Subject): boolean =>
  plays(subject, 'preservative') || plays(subject, 'preservative-booster')

/** Sold on weak evidence: never counted, and a rule of its own says so. */
export const isUnproven = ({ classes }: Subject): boolean => classes.has('unproven-preservative')

interface PreservingBlend {
  blend: Subject
  active: Subject['parts']
}

/** Recorded preservative blends by the id of their first preserving part; worked out once for each world. */
const blendsOf = new WeakMap<World, ReadonlyMap<string, PreservingBlend[]>>()

function preservingBlends(world: World): ReadonlyMap<string, PreservingBlend[]> {
  const known = blendsOf.get(world)
  if (known) return known
  const byPart = new Map<string, PreservingBlend[]>()
  for (const blend of world.players('preservative')) {
    const active = blend.parts.filter(({ subject }) => preserves(subject))
    const [first] = active
    if (active.length < 2 || !first) continue
    byPart.set(first.subject.id, [...(byPart.get(first.subject.id) ?? []), { blend, active }])
  }
  blendsOf.set(world, byPart)
  return byPart
}

/** Share of a blend that the single lines make up; 0 where a part is missing. */
function shareMadeUp({ active }: PreservingBlend, entries: ReadonlyMap<string, Entry>): number {
  let share_percent = Infinity
  for (const { subject, share } of active) {
    const entry = entries.get(subject.id)
    if (!entry) return 0
    share_percent = Math.min(share_percent, entry.share_percent / share)
  }
  return share_percent
}

/** A usual preservative blend whose parts stand as single lines works as that blend: the parts lift each other. */
function blendsByParts({ world }: FormulaContext, entries: ReadonlyMap<string, Entry>): Entry[] {
  if (entries.size < 2) return []
  const byPart = preservingBlends(world)
  const found: Entry[] = []
  for (const id of entries.keys()) {
    for (const one of byPart.get(id) ?? NO_BLENDS) {
      if (entries.has(one.blend.id)) continue
      const share_percent = shareMadeUp(one, entries)
      if (share_percent > 0)
        found.push({ subject: one.blend, share_percent, joinedFrom: one.active.map(({ subject }) => subject.id) })
    }
  }
  return found
}

const NO_BLENDS: readonly PreservingBlend[] = []

/** Preserving entries: whole blends by their own record, everything else substance by substance. */
export function entriesOf(context: FormulaContext): Entry[] {
  const entries = new Map<string, Entry>()
  const add = (subject: Subject, share_percent: number) => {
    const known = entries.get(subject.id)
    entries.set(subject.id, { subject, share_percent: (known?.share_percent ?? 0) + share_percent, joinedFrom: [] })
  }
  for (const line of context.lines) {
    if (preserves(line.subject)) add(line.subject, line.share_percent)
    else
      for (const { subject, share } of line.subject.parts)
        if (preserves(subject)) add(subject, line.share_percent * share)
  }
  return [...entries.values(), ...blendsByParts(context, entries)]
}

/**
 * The claim by which an ingredient preserves in this formula. An active or acid that also preserves a little is no
 * preservative system; a booster is meant as one.
 */
export function preservingClaim(subject: Subject, context: FormulaContext): PlaysRole | undefined {
  if (isUnproven(subject)) return undefined
  const here = context.rolesOf(subject)
  return (
    here.slice(0, 1).find(({ role }) => role === 'preservative')?.claim ??
    here.find(({ role }) => role === 'preservative-booster')?.claim
  )
}
