import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { numberOf } from '#engine/graph/subject.ts'
import { entriesOf, preserves, preservingClaim } from './agents.ts'
import type { Entry } from './agents.ts'
import { acidFormOf } from './acid.ts'
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
  joined: boolean
  /** against its typical level, whatever becomes of it here; 1 at or above that level */
  nominal: number
  /** what of that is at work in this formula, 0 to 1 */
  effect: Sure
  /** the preserving substances in it */
  substances: readonly SubstanceState[]
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

function portionsOf({ subject, share_percent }: Entry, context: FormulaContext): Portion[] {
  if (!partsAreKnown(subject))
    return [{ state: stateOf(subject, share_percent * strengthFactor(subject), context), weight: 1 }]
  return subject.parts
    .filter(({ subject: part }) => preserves(part))
    .map(({ subject: part, share }) => ({
      state: stateOf(part, share_percent * share, context),
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
    mean.least += (strength.least * weight) / all
    mean.most += (strength.most * weight) / all
  }
  return mean
}

function workOf(entry: Entry, context: FormulaContext): Work[] {
  const claim = preservingClaim(entry.subject, context)
  const full_percent = claim?.level_percent?.typical ?? claim?.level_percent?.max
  if (!claim || full_percent === undefined) return []
  const portions = portionsOf(entry, context)
  const strength = effectOf(entry.subject, portions, context)
  const dosed = entry.share_percent / full_percent
  return [
    {
      ...entry,
      booster: claim.role === 'preservative-booster',
      nominal: Math.min(1, dosed),
      effect: { least: Math.min(1, dosed * strength.least), most: Math.min(1, dosed * strength.most) },
      substances: portions.map(({ state }) => state),
    },
  ]
}

/** Several rules and the search read it, so it is worked out once for each context. */
const memo = new WeakMap<FormulaContext, Work[]>()

/** Everything that keeps germs down in this formula, with how far it is at work; by id. */
export function preservingWork(context: FormulaContext): Work[] {
  const known = memo.get(context)
  if (known) return known
  const work = entriesOf(context)
    .flatMap((entry) => workOf(entry, context))
    .sort((a, b) => (a.subject.id < b.subject.id ? -1 : 1))
  memo.set(context, work)
  return work
}

/** A booster counts half: it helps, it does not replace. Two boosters at full level make a borderline system. */
export const BOOSTER_WORTH = 0.5

export const worthOf = ({ booster }: Work): number => (booster ? BOOSTER_WORTH : 1)

/** Sum of doses at work, boosters counted half; from about 0.5 on a system is more than a trace. */
export const preservingDose = (work: readonly Work[], sure: keyof Sure = 'most'): number =>
  work.reduce((sum, one) => sum + one.effect[sure] * worthOf(one), 0)

/** Whether an agent in this formula preserves by an undissociated acid. */
export const isAcidAgent = (subject: Subject, context: FormulaContext): boolean =>
  acidFormOf(subject, context.world)?.needsAcidForm === true
