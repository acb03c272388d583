import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { numberOf } from '#engine/graph/subject.ts'
import { once } from '#engine/units/once.ts'
import { entriesOf, preserves, preservingClaim } from './agents.ts'
import type { Entry } from './agents.ts'
import { leftByNeighbours } from './broken.ts'
import { onceFor } from './once.ts'
import { stateOf } from './substance.ts'
import type { SubstanceState } from './substance.ts'
import { strengthOf } from './strength.ts'
import type { Sure } from './strength.ts'
import { hangsOnPh, workingWindow } from './window.ts'

/** Something that keeps germs down in a formula, with how far it is dosed and at work. */
export interface Work {
  subject: Subject
  /** [% of the formula], as supplied */
  share_percent: number
  booster: boolean
  /** ids of the single lines that together are this usual blend; empty for a line of its own */
  joinedFrom: readonly string[]
  /** against its typical level, whatever becomes of it here; 1 at or above that level */
  nominal: number
  /** what of that is at work in this formula, 0 to 1 */
  effect: Sure
  /** the preserving substances in it */
  substances: readonly SubstanceState[]
  /** the preserving parts of a recorded blend, each by its own record; worked out when asked for */
  parts(): readonly Work[]
}

/** A part of an agent: a substance with its share of it, and how much that part carries of the agent's work. */
interface Portion {
  state: SubstanceState
  weight: number
}

/** How far a part is dosed against what it would need alone: the larger, the more of the blend's work it carries. */
function weightOf(subject: Subject, share_percent: number, context: FormulaContext): number {
  const level = preservingClaim(subject, context)?.level_percent
  const full_percent = level?.typical ?? level?.max
  return full_percent === undefined ? 0 : share_percent / full_percent
}

const strengthFactor = (subject: Subject): number => (numberOf(subject, 'active_percent') ?? 100) / 100

/** Shares of a blend that nobody recorded are made up, so its parts are not looked at. */
const partsAreKnown = ({ madeOf, tier }: Subject): boolean => madeOf.length > 0 && tier !== 'inventory'

/** States by id of what stands in the formula as a line of its own; null: not to be looked up. */
type Known = Map<string, SubstanceState> | null

function stateIn(known: Known, subject: Subject, share_percent: number, context: FormulaContext): SubstanceState {
  const found = known?.get(subject.id)
  if (found) return found
  const state = stateOf(subject, share_percent, context)
  known?.set(subject.id, state)
  return state
}

function portionsOf({ subject, share_percent }: Entry, context: FormulaContext, known: Known): Portion[] {
  if (!partsAreKnown(subject)) {
    const state = stateIn(known, subject, share_percent * strengthFactor(subject), context)
    return [{ state, weight: 1 }]
  }
  return subject.parts
    .filter(({ subject: part }) => preserves(part))
    .map(({ subject: part, share }) => ({
      state: stateIn(known, part, share_percent * share, context),
      weight: weightOf(part, share_percent * share, context),
    }))
}

/** Strength of the whole as the mean of its parts, each by what it carries; parts of no weight leave it as it is. */
function effectOf(subject: Subject, portions: readonly Portion[], context: FormulaContext): Sure {
  const window = workingWindow(subject)?.range
  const hangs = hangsOnPh(subject)
  const all = portions.reduce((sum, { weight }) => sum + weight, 0)
  if (all === 0) return { least: 1, most: 1 }
  const mean = { least: 0, most: 0 }
  for (const { state, weight } of portions) {
    const acid = state.form?.needsAcidForm === true
    // Of a blend only the acids hang on its window; what does not ionise keeps to its own.
    const own = acid ? window : (workingWindow(state.subject)?.range ?? window)
    const strength = strengthOf(state, context.ph, own, acid ? hangs : hangsOnPh(state.subject))
    const left = leftByNeighbours(state.subject, context)
    mean.least += (strength.least * left.least * weight) / all
    mean.most += (strength.most * left.most * weight) / all
  }
  return mean
}

/** Parts of a recorded blend, each by its own record; those of joined lines stand in the formula themselves. */
function partsOf({ subject, share_percent, joinedFrom }: Entry, portions: readonly Portion[], context: FormulaContext) {
  if (joinedFrom.length > 0 || !partsAreKnown(subject)) return NO_WORK
  return portions.flatMap((portion) => {
    const share = subject.parts.find((part) => part.subject === portion.state.subject)?.share ?? 0
    const entry = { subject: portion.state.subject, share_percent: share_percent * share, joinedFrom: [] }
    return workFrom(entry, [{ ...portion, weight: 1 }], context)
  })
}

const NO_WORK: readonly Work[] = []
const noWork = (): readonly Work[] => NO_WORK

function workFrom(entry: Entry, portions: readonly Portion[], context: FormulaContext): Work[] {
  const claim = preservingClaim(entry.subject, context)
  const full_percent = claim?.level_percent?.typical ?? claim?.level_percent?.max
  if (!claim || full_percent === undefined) return []
  const strength = effectOf(entry.subject, portions, context)
  const dosed = entry.share_percent / full_percent
  return [
    {
      ...entry,
      booster: claim.role === 'preservative-booster',
      nominal: Math.min(1, dosed),
      effect: { least: Math.min(1, dosed * strength.least), most: Math.min(1, dosed * strength.most) },
      substances: portions.map(({ state }) => state),
      parts: portions.length > 1 ? once(() => partsOf(entry, portions, context)) : noWork,
    },
  ]
}

function lookForWork(context: FormulaContext): Work[] {
  const known = new Map<string, SubstanceState>()
  return entriesOf(context).flatMap((entry) => {
    const { subject, joinedFrom } = entry
    // What neither preserves here nor has a level needs no state.
    if (!preservingClaim(subject, context)) return []
    const own = !partsAreKnown(subject) || joinedFrom.length > 0
    return workFrom(entry, portionsOf(entry, context, own ? known : null), context)
  })
}

/** Everything that keeps germs down in this formula, with how far it is at work; by id. Once for each context. */
export const preservingWork = onceFor((context) =>
  lookForWork(context).sort((a, b) => (a.subject.id < b.subject.id ? -1 : 1)),
)

/** Agents that stand in the formula as lines or as parts of other lines, without the blends that they make up. */
export const agentsHere = onceFor((context) =>
  preservingWork(context).filter(({ joinedFrom }) => joinedFrom.length === 0),
)

/** A booster counts half: it helps, it does not replace. Two boosters at full level make a borderline system. */
const BOOSTER_WORTH = 0.5

export type ValueOf = (one: Work) => number

const worth = (one: Work, value: ValueOf): number => value(one) * (one.booster ? BOOSTER_WORTH : 1)

/** A value that decides nothing more: what is above it counts as full cover or dose. */
const PLENTY = 0.5

/** A blend is worth what its record says, or what its parts come to, whichever is more. */
function withParts(one: Work, value: ValueOf): number {
  const own = worth(one, value)
  if (own >= PLENTY) return own
  return Math.max(
    own,
    one.parts().reduce((sum, part) => sum + worth(part, value), 0),
  )
}

interface Units {
  single: readonly Work[]
  joined: readonly { blend: Work; parts: readonly Work[] }[]
}

/** Lines of their own, and the blends that some of them make up where all of these are there. */
function unitsOf(work: readonly Work[]): Units {
  const single = work.filter(({ joinedFrom }) => joinedFrom.length === 0)
  if (single.length === work.length) return { single, joined: NOTHING_JOINED }
  const joined = work.flatMap((blend) => {
    const parts = single.filter(({ subject }) => blend.joinedFrom.includes(subject.id))
    return blend.joinedFrom.length > 0 && parts.length === blend.joinedFrom.length ? [{ blend, parts }] : []
  })
  return { single, joined }
}

const NOTHING_JOINED: Units['joined'] = []

/** What the best of the joined blends add to their single lines; each line counts for one blend only. */
function liftOf(joined: Units['joined'], value: ValueOf): number {
  const lifts = joined
    .map(({ blend, parts }) => ({
      blend,
      lift: worth(blend, value) - parts.reduce((sum, part) => sum + worth(part, value), 0),
    }))
    .filter(({ lift }) => lift > 0)
    .sort((a, b) => b.lift - a.lift || (a.blend.subject.id < b.blend.subject.id ? -1 : 1))
  const used = new Set<string>()
  return lifts.reduce((sum, { blend, lift }) => {
    if (blend.joinedFrom.some((id) => used.has(id))) return sum
    for (const id of blend.joinedFrom) used.add(id)
    return sum + lift
  }, 0)
}

/**
 * Sum of a value over all agents, boosters counted half. Single lines that together are a usual blend count as that
 * blend where that is more; each line is counted once.
 */
export function sumOver(work: readonly Work[], value: ValueOf): number {
  const { single, joined } = unitsOf(work)
  const sum = single.reduce((total, one) => total + withParts(one, value), 0)
  return joined.length === 0 ? sum : sum + liftOf(joined, value)
}

/** Sum of doses at work, boosters counted half; from about 0.5 on a system is more than a trace. */
export const preservingDose = (work: readonly Work[], sure: keyof Sure = 'most'): number =>
  sumOver(work, ({ effect }) => effect[sure])
