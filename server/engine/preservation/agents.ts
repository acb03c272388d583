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
  /** made of single lines that together are a usual blend */
  joined: boolean
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

/** A usual preservative blend whose parts stand as single lines works as that blend: the parts lift each other. */
function blendsByParts({ world }: FormulaContext, entries: ReadonlyMap<string, Entry>): Entry[] {
  if (entries.size < 2) return []
  const byPart = preservingBlends(world)
  return [...entries.keys()].flatMap((id) =>
    (byPart.get(id) ?? []).flatMap(({ blend, active }) => {
      if (entries.has(blend.id)) return []
      const shares = active.map(({ subject, share }) => (entries.get(subject.id)?.share_percent ?? 0) / share)
      const share_percent = Math.min(...shares)
      return share_percent > 0 ? [{ subject: blend, share_percent, joined: true }] : []
    }),
  )
}

/** Preserving entries: whole blends by their own record, everything else substance by substance. */
export function entriesOf(context: FormulaContext): Entry[] {
  const entries = new Map<string, Entry>()
  const add = (subject: Subject, share_percent: number) => {
    const known = entries.get(subject.id)
    entries.set(subject.id, { subject, share_percent: (known?.share_percent ?? 0) + share_percent, joined: false })
  }
  for (const line of context.lines) {
    if (preserves(line.subject)) add(line.subject, line.share_percent)
    else for (const part of line.subject.parts) add(part.subject, line.share_percent * part.share)
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
