import { lawfulFactor } from '#engine/checks/law.ts'
import { nameOf } from '#engine/checks/say.ts'
import { doseOf } from '#engine/dose/dose.ts'
import type { Dose } from '#engine/dose/dose.ts'
import { equivalentsAt } from '#engine/dose/equivalents.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Wishes } from '#engine/model/swap.ts'
import { wordOf } from '#engine/graph/subject.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Candidate } from './candidates.ts'
import type { Job } from './job.ts'
import { isOtherKind } from './other-kind.ts'
import { tryOut } from './trial.ts'
import type { Before, Trial } from './trial.ts'

/** A candidate after its trial in the formula. */
export interface Assessed {
  candidate: Candidate
  dose: Dose
  trial: Trial | null
  /** final rank, higher is better */
  rank: number
  refusedBecause: string | null
}

/** Below this a trial dose is no dose. */
const LEAST_PERCENT = 0.001

export function doseFor(job: Job, { stand, claim, stated }: Candidate, { ph, world }: FormulaContext): Dose {
  const dose = doseOf({
    basis: job.swap.dose,
    say: world.say,
    missing: job.missing,
    share_percent: job.share_percent,
    ...(job.strength_percent !== undefined && { strength_percent: job.strength_percent }),
    missingClaim: job.claim,
    stand,
    standClaim: claim,
    equivalentsOf: (subject) => equivalentsAt(subject, ph ?? job.swap.ends_at_ph ?? null, world.knowledge.acids),
    ...(stated?.ratio !== undefined && { ratio: stated.ratio }),
  })
  return { ...dose, share_percent: Math.max(LEAST_PERCENT, roundTo(Math.min(99, dose.share_percent), 3)) }
}

/** Lowers a dose to what the law allows, when that is still a working level; what is dosed to a pH would miss it. */
function lawfulDose(job: Job, dose: Dose, { claim }: Candidate, trial: Trial): Dose | null {
  if (job.swap.dose === 'equivalents') return null
  if (trial.conflict.length === 0 || trial.conflict.some(({ rule }) => rule !== 'limit-by-law')) return null
  const share_percent = roundTo(dose.share_percent * lawfulFactor(trial.after) * 0.999, 3)
  if (!(share_percent > 0) || share_percent < (claim?.level_percent?.min ?? share_percent)) return null
  return { ...dose, share_percent, how: trial.after.world.say`${dose.how}, lowered to what the law allows` }
}

/** Roles beside the main one that the missing ingredient plays here and the stand-in does not. */
export const uncovered = (job: Job, { stand }: Candidate): string[] =>
  job.others.map(({ role }) => role).filter((role) => !stand.allRoles.has(role))

/** Reasons that hold in every formula; what hangs on pH, heat, neighbours or law is decided by the checks. */
const DECIDES = new Set(['phase', 'microbial'])

/**
 * A denial for the sake of the role decides against what does not play the very role sought; for what does, it says
 * that the two differ in some other respect, and that costs rank.
 */
export function denialDecides({ denied, distance }: Candidate): boolean {
  if (!denied) return false
  const why = denied.why ?? 'role'
  return DECIDES.has(why) || (why === 'role' && distance >= 1)
}

/** A reason that hangs on circumstances still says that the two are not the same. */
const DENIED_COST = 0.12
/** A ready mix that holds the missing one is hardly easier to get. */
const HOLDS_MISSING_COST = 0.12
/** Doses that differ by more than this factor speak of another kind of ingredient. */
const FAR_DOSE = 5
const FAR_DOSE_COST = 0.12

function ownCost(job: Job, { denied, stand }: Candidate, dose: Dose): number {
  const factor = dose.share_percent / job.share_percent
  const farDose = job.swap.dose === 'strength' && (factor > FAR_DOSE || factor < 1 / FAR_DOSE)
  const holdsMissing = stand.madeOf.some(({ ingredient }) => ingredient === job.missing.id)
  return (denied ? DENIED_COST : 0) + (farDose ? FAR_DOSE_COST : 0) + (holdsMissing ? HOLDS_MISSING_COST : 0)
}

const UNCOVERED_COST = 0.03
const UNKNOWN_DOSE_COST = 0.03

/** So much of the formula may be left to the filler when a strong stand-in needs less; more is a hole in the product. */
const MOST_HOLE_PERCENT = 15

/** A dose this many times the usual upper level is another product. */
const FAR_OVER_LEVEL = 1.5

/** What a higher dose may take from: the phase that fills the product up. */
const GIVES_ROOM = ['water-phase', 'liquid-emollient', 'powder-base']

/** What can be told from phase and dose alone, before anything is mixed. */
function unfitHere(
  job: Job,
  { stand, claim }: Candidate,
  { share_percent }: Dose,
  context: FormulaContext,
): string | null {
  const { say } = context.world
  const isWater = job.missing.allRoles.has('water-phase')
  // A stronger wax needs less, and oil takes up the rest.
  const oilFills =
    job.missing.allRoles.has('structurant') &&
    context.lines.some(({ subject }) => subject.allRoles.has('liquid-emollient'))
  // What carries more active matter, or more acid, brings less water along: the water phase takes that up.
  const waterFills =
    (job.swap.dose === 'active-matter' || job.swap.dose === 'equivalents') &&
    context.lines.some(({ subject }) => subject.id !== job.missing.id && subject.allRoles.has('water-phase'))
  if (!isWater && !oilFills && !waterFills && job.share_percent - share_percent > MOST_HOLE_PERCENT) {
    return say`${nameOf(stand)} at its own ${say.short(share_percent)} % does not fill the ${say.short(job.share_percent)} % of ${nameOf(job.missing)}`
  }
  const room = context.lines.reduce(
    (sum, { subject, share_percent: share }) =>
      sum + (GIVES_ROOM.some((role) => subject.allRoles.has(role)) ? share : 0),
    0,
  )
  if (share_percent - job.share_percent > Math.max(room, 1) && share_percent > job.share_percent * 1.02) {
    return say`${nameOf(stand)} would need ${say.short(share_percent)} %, for which this formula has no room`
  }
  const most_percent = claim?.level_percent?.max
  if (
    job.swap.dose === 'strength' &&
    most_percent !== undefined &&
    share_percent > job.share_percent &&
    share_percent > FAR_OVER_LEVEL * most_percent
  ) {
    return say`${nameOf(stand)} would need ${say.short(share_percent)} %, far above the ${say.short(most_percent)} % to which it is used`
  }
  const [was, is] = [wordOf(job.missing, 'solubility'), wordOf(stand, 'solubility')]
  if (context.form === 'anhydrous' && is === 'water' && (was === 'oil' || was === 'silicone')) {
    return say`${nameOf(stand)} dissolves in water, not in the oils of this formula`
  }
  return null
}

/** Why a candidate is out before it is mixed in; null when it is worth a trial. */
function refusedUnmixed(job: Job, candidate: Candidate, dose: Dose, context: FormulaContext): string | null {
  const { stand, denied, failedMust } = candidate
  const { say } = context.world
  if (denialDecides(candidate) && denied)
    return denied.says
      ? say`${nameOf(stand)}: ${denied.says}`
      : say`${nameOf(stand)}: is known not to stand in for ${nameOf(job.missing)}`
  if (failedMust) return say`${nameOf(stand)}: ${failedMust.why}`
  if (isOtherKind(candidate))
    return say`${nameOf(stand)} has next to nothing in common with ${nameOf(job.missing)} as ${say.inside(job.role.label)}`
  return unfitHere(job, candidate, dose, context)
}

/** What a stand-in loses by itself, whatever the trial says. */
const costUnmixed = (job: Job, candidate: Candidate, dose: Dose): number =>
  UNCOVERED_COST * uncovered(job, candidate).length +
  UNKNOWN_DOSE_COST * dose.unknown.length +
  ownCost(job, candidate, dose)

/** What can be told of a candidate before it is mixed in. */
export interface Prepared {
  candidate: Candidate
  dose: Dose
  refusedBecause: string | null
  /** the best that its rank can become */
  bound: number
}

export function prepare(job: Job, candidate: Candidate, { context }: Before): Prepared {
  const dose = doseFor(job, candidate, context)
  const refusedBecause = refusedUnmixed(job, candidate, dose, context)
  return { candidate, dose, refusedBecause, bound: candidate.promise - costUnmixed(job, candidate, dose) }
}

export function assess(job: Job, { candidate, ...prepared }: Prepared, before: Before, wishes: Wishes): Assessed {
  const { refusedBecause, bound } = prepared
  let { dose } = prepared
  if (refusedBecause !== null) return { candidate, dose, trial: null, rank: -1, refusedBecause }
  const out = new Set([job.missing.id])
  const { stand } = candidate
  let trial = tryOut(before, out, [{ stand, share_percent: dose.share_percent }], wishes)
  const lower = trial.conflict.length > 0 ? lawfulDose(job, dose, candidate, trial) : null
  if (lower) {
    dose = lower
    trial = tryOut(before, out, [{ stand, share_percent: dose.share_percent }], wishes)
  }
  const [worst] = trial.conflict
  return { candidate, dose, trial, rank: bound - trial.cost, refusedBecause: worst ? worst.message : null }
}
