import { wishUnmet } from './wishes.ts'
import type { Wishes } from '#engine/model/swap.ts'
import { assess, prepare } from './assess.ts'
import type { Assessed, Prepared } from './assess.ts'
import type { Before } from './trial.ts'
import type { Candidate } from './candidates.ts'
import type { Job } from './job.ts'

export interface Search {
  offered: Assessed[]
  refused: Assessed[]
}

/** A stand-in below this is not worth a batch. */
export const LEAST_RANK = 0.4
/** Refusals that are worth telling: what looks right by its promise. */
const MOST_REFUSED = 8
/** Far more than this many trials are never needed: the promise falls steadily. */
const MOST_TRIALS = 90
/** The work of a trial grows with the lines; beyond this length fewer are made. */
const USUAL_LINES = 15
const LEAST_TRIALS = 15

const trialsFor = (lines: number): number =>
  Math.max(LEAST_TRIALS, Math.min(MOST_TRIALS, Math.round((MOST_TRIALS * USUAL_LINES) / lines)))

/** Best bound first; ties as the candidates came. */
const byBound = (a: Prepared, b: Prepared): number => b.bound - a.bound

const unmetWish = (job: Job, candidate: Candidate, unmet: string): Assessed => ({
  candidate,
  dose: { share_percent: job.share_percent, how: '', unknown: [] },
  trial: null,
  rank: -1,
  refusedBecause: unmet,
})

/**
 * Tries candidates in the order of what their rank can become at best. A trial only costs, so the search ends when the
 * next cannot beat the worst of the wanted number: nothing better is passed over.
 */
export function search(
  job: Job,
  candidates: readonly Candidate[],
  before: Before,
  wishes: Wishes,
  wanted: number,
  least = LEAST_RANK,
): Search {
  const offered: Assessed[] = []
  const refused: Assessed[] = []
  const inFormula = new Set(before.context.lines.map(({ subject }) => subject.id))
  const mostTrials = trialsFor(before.context.lines.length)
  const worthTrying = candidates.filter(({ promise }) => promise >= least).map((one) => prepare(job, one, before))
  let trials = 0
  for (const prepared of worthTrying.sort(byBound)) {
    const { candidate, bound } = prepared
    const full = offered.length >= wanted && (offered[wanted - 1]?.rank ?? 0) >= bound
    if (full || trials >= mostTrials) break
    const unmet = wishUnmet(candidate.stand, wishes, inFormula)
    const one =
      unmet === null
        ? assess(job, prepared, before, wishes)
        : unmetWish(job, candidate, unmet(before.context.world.say))
    if (one.trial) trials += 1
    if (one.refusedBecause !== null) {
      if (refused.length < MOST_REFUSED) refused.push(one)
    } else if (one.rank >= least) {
      offered.push(one)
      offered.sort((a, b) => b.rank - a.rank || (a.candidate.stand.id < b.candidate.stand.id ? -1 : 1))
    }
  }
  return { offered: offered.slice(0, wanted), refused }
}
