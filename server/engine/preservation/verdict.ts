import type { FormulaContext } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Cover, PreservationVerdict } from '#engine/model/preservation.ts'
import { isUnproven, preserves, preservingClaim } from './agents.ts'
import { COVERED, coverAt, WEAK } from './covers.ts'
import { likeLotions } from './lotions.ts'
import { GROUPS } from './tables.ts'
import type { Group } from './tables.ts'
import { ENOUGH_DOSE, hurdleWithoutPreservative } from './too-little.ts'
import { hangsOnPh, windowPosition } from './window.ts'
import { agentsHere, preservingDose, preservingWork } from './work.ts'
import type { Work } from './work.ts'

/** A trace of water in wax or oil is none to preserve. */
const NO_WATER_PERCENT = 1

export const hasNoWater = ({ water_percent }: FormulaContext): boolean => water_percent < NO_WATER_PERCENT

/** Agents of which the pH decides, in a formula whose pH nobody stated. */
export const waitingForPh = (context: FormulaContext): Work[] =>
  context.ph !== null ? [] : agentsHere(context).filter(({ subject }) => hangsOnPh(subject))

/** Lines that are said to preserve and of which no level or spectrum is known: they may do the work, or not. */
export const unknownAgents = (context: FormulaContext): FormulaContext['lines'][number]['subject'][] =>
  context.lines
    .map(({ subject }) => subject)
    .filter((subject) => preserves(subject) && !isUnproven(subject))
    .filter((subject) => {
      const claim = preservingClaim(subject, context)
      if (claim === undefined) return subject.tier === 'inventory'
      const level = claim.level_percent?.typical ?? claim.level_percent?.max
      return level === undefined || !usedClaim(subject, 'spectrum')
    })

function coverWord(least: number, most: number): Cover {
  if (least >= COVERED) return 'covered'
  return most > WEAK ? 'weak' : 'open'
}

/** An agent that alone, at this level or less, kept all four kinds of organism down in a lotion like this one. */
const passedTest = (context: FormulaContext): boolean =>
  agentsHere(context).some(({ subject, share_percent }) =>
    likeLotions(subject, context).some(({ level_percent }) => level_percent !== null && level_percent <= share_percent),
  )

/**
 * Cover by organism group in words. Where a hurdle does the work and no agent is there, no group is said to be covered;
 * without water there is nothing to cover. A test in one like lotion speaks against "open" and is not enough for
 * "covered". A group that is not surely covered is not known while an agent is without figures, or while the pH that
 * decides is not known.
 */
export function coverWords(context: FormulaContext): Record<Group, Cover> {
  const [least, most] = [coverAt.least(context), coverAt.most(context)]
  const unknown = unknownAgents(context).length > 0
  const waiting = waitingForPh(context).length > 0
  const passed = passedTest(context)
  const hurdle = hurdleWithoutPreservative(context) !== null
  const word = (group: Group): Cover => {
    if (hasNoWater(context)) return 'not-known'
    if (hurdle && !least) return 'not-known'
    if (!least || !most) return preservingWork(context).length === 0 && !unknown ? 'open' : 'not-known'
    const found = coverWord(least[group], most[group])
    const here = found === 'open' && passed ? 'weak' : found
    if (here === 'covered') return here
    return unknown || (waiting && most[group] >= COVERED) ? 'not-known' : here
  }
  return Object.fromEntries(GROUPS.map((group) => [group, word(group)])) as Record<Group, Cover>
}

/** The only agent of weight failed alone in a lotion like this one, at the highest level that was tried. */
function failedTest(context: FormulaContext): boolean {
  const working = agentsHere(context).filter(({ effect }) => effect.most >= ENOUGH_DOSE)
  const [only] = working
  return (
    only !== undefined &&
    working.length === 1 &&
    likeLotions(only.subject, context).some(({ level_percent }) => level_percent === null)
  )
}

/** No agent stands in its window: what the slopes leave is no preservation to count on. */
function allOutside(context: FormulaContext): boolean {
  const agents = agentsHere(context)
  return agents.length > 0 && agents.every(({ subject }) => windowPosition(subject, context.ph) === 'outside')
}

/** So many open groups are no gap but no preservation. */
const TOO_MANY_OPEN = 2

/**
 * What can be said of the whole. `plausible` rests on usual levels, windows and spectra, and never means preserved.
 * Unknown never turns into plausible: where a missing pH or an agent without figures would decide, it is not known.
 */
export function verdictOf(context: FormulaContext): PreservationVerdict {
  if (hasNoWater(context) || hurdleWithoutPreservative(context) !== null) return 'plausible'
  const work = preservingWork(context)
  const undecided = unknownAgents(context).length > 0
  const covers = coverWords(context)
  const words = GROUPS.map((group) => covers[group])
  const [sure, most] = [preservingDose(work, 'least'), preservingDose(work)]
  if (most < ENOUGH_DOSE && !passedTest(context)) return undecided ? 'not-known' : 'fails'
  if (failedTest(context) || allOutside(context)) return 'fails'
  if (words.includes('not-known')) return 'not-known'
  if (words.filter((word) => word === 'open').length >= TOO_MANY_OPEN) return 'fails'
  if (words.every((word) => word === 'covered') && sure >= ENOUGH_DOSE) return 'plausible'
  return waitingForPh(context).length > 0 ? 'not-known' : 'weak'
}
