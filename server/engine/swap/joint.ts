import { nameOf } from '#engine/checks/say.ts'
import type { Dose } from '#engine/dose/dose.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Refusal, SwapsReply, Wishes } from '#engine/model/swap.ts'
import { prepare } from './assess.ts'
import { bestFirst } from './best-first.ts'
import { candidatesFor } from './candidates.ts'
import type { Candidate } from './candidates.ts'
import { minimalFinding } from './conflict.ts'
import { hangsOn } from './hangs-on.ts'
import type { Job } from './job.ts'
import { judgeLeaveOut } from './leave-out.ts'
import { jointSwapOf } from './propose-joint.ts'
import { LEAST_RANK } from './search.ts'
import { tryOut } from './trial.ts'
import type { Before, Trial } from './trial.ts'
import { wishUnmet } from './wishes.ts'

export interface JointQuestion {
  jobs: readonly Job[]
  before: Before
  wishes: Wishes
  limit: number
}

/** A candidate for one of the missing, with its dose. */
export interface Option {
  job: Job
  candidate: Candidate
  dose: Dose
  /** the best that its rank can become */
  worth: number
}

/** A combination after its trial. */
export interface Combination {
  options: Option[]
  trial: Trial
  rank: number
}

/** Rules between two lines or about one line and the law: another stand-in elsewhere does not lift them. */
const LASTING = new Set([
  ...[
    'charge-clash',
    'binding-clash',
    'reaction-clash',
    'ion-clash',
    'limit-by-law',
    'limit-by-opinion',
    'law-condition',
  ],
  ...['small-children', 'phototoxic'],
])

/** More trials than this no answer is worth; the reply says when it was reached. */
const MOST_TRIALS = 240

function optionsFor(job: Job, { jobs, before, wishes }: JointQuestion): Option[] {
  const missing = new Set(jobs.map((one) => one.missing.id))
  const present = new Set(before.context.lines.map(({ subject }) => subject.id))
  return candidatesFor(job, before.context, missing, wishes)
    .filter(({ stand }) => wishUnmet(stand, wishes, present) === null)
    .map((candidate) => prepare(job, candidate, before))
    .filter(({ refusedBecause }) => refusedBecause === null)
    .map(({ candidate, dose, bound }) => ({ job, candidate, dose, worth: bound }))
    .filter(({ worth }) => worth >= LEAST_RANK)
    .sort((a, b) => b.worth - a.worth || (a.candidate.stand.id < b.candidate.stand.id ? -1 : 1))
}

function combine(options: Option[], bound: number, { jobs, before, wishes }: JointQuestion): Combination {
  const out = new Set(jobs.map(({ missing }) => missing.id))
  const placed = options.map(({ candidate: { stand }, dose: { share_percent } }) => ({ stand, share_percent }))
  const trial = tryOut(before, out, placed, wishes)
  return { options, trial, rank: bound - trial.cost }
}

/** The one stand-in that a lasting objection is about beside lines that stay: it fails with every partner. */
function hopeless({ options, trial }: Combination): string | null {
  const ids = options.map(({ candidate }) => candidate.stand.id)
  for (const { rule, about } of trial.conflict) {
    const own = about.filter((id) => ids.includes(id))
    if (LASTING.has(rule) && own.length === 1) return own[0] ?? null
  }
  return null
}

const idsOf = ({ options }: Combination): string => options.map(({ candidate }) => candidate.stand.id).join(' ')

interface Found {
  held: Combination[]
  failed: Combination[]
  /** every combination that could be better was tried or shown to fail */
  complete: boolean
}

/** One substance in two places is another dose; what fails with every partner is not tried again. */
const worthTrying = (options: readonly Option[], dead: ReadonlySet<string>): boolean => {
  const ids = options.map(({ candidate }) => candidate.stand.id)
  return new Set(ids).size === ids.length && !ids.some((id) => dead.has(id))
}

/** Combinations in falling order of what they can be worth, until none left can beat the worst of the wanted number. */
export function searchTogether(question: JointQuestion, mostTrials = MOST_TRIALS): Found {
  const { jobs, limit } = question
  const found: Found = { held: [], failed: [], complete: true }
  const dead = new Set<string>()
  let trials = 0
  for (const { chosen, bound } of bestFirst(jobs.map((job) => optionsFor(job, question)))) {
    if (found.held.length >= limit && (found.held[limit - 1]?.rank ?? 0) >= bound) break
    if (!worthTrying(chosen, dead)) continue
    if ((trials += 1) > mostTrials) {
      found.complete = false
      break
    }
    const combination = combine(chosen, bound, question)
    if (combination.trial.conflict.length > 0) {
      found.failed.push(combination)
      const id = hopeless(combination)
      if (id !== null) dead.add(id)
    } else if (combination.rank >= LEAST_RANK) {
      found.held.push(combination)
      found.held.sort((a, b) => b.rank - a.rank || (idsOf(a) < idsOf(b) ? -1 : 1))
    }
  }
  return { ...found, held: found.held.slice(0, limit) }
}

const MOST_REFUSED = 6

function refusals({ failed, held }: Found): Refusal[] {
  const offered = new Set(held.flatMap(({ options }) => options.map(({ candidate }) => candidate.stand.id)))
  return failed
    .filter(({ options }) => !options.some(({ candidate }) => offered.has(candidate.stand.id)))
    .slice(0, MOST_REFUSED)
    .map(({ options, trial }) => ({
      lines: options.map(({ candidate, dose }) => ({
        ingredient: candidate.stand.id,
        share_percent: dose.share_percent,
      })),
      conflict: trial.conflict.slice(0, 2).map((finding: Finding) => minimalFinding(finding, trial.after)),
      message: trial.conflict[0]?.message ?? '',
    }))
}

const VERDICTS = ['fine', 'workable', 'no']

const worstLeaveOut = ({ jobs, before }: JointQuestion): SwapsReply['leaveOut'] =>
  jobs
    .map((job) => judgeLeaveOut(before, job))
    .sort((a, b) => VERDICTS.indexOf(b.verdict) - VERDICTS.indexOf(a.verdict))[0] ?? { verdict: 'no', why: '' }

function whyOf({ jobs, before }: JointQuestion, { held, complete }: Found): string {
  const { say } = before.context.world
  const names = jobs.map(({ missing, role }) => `${nameOf(missing)} (${say.inside(role.label)})`).join(` ${say`and`} `)
  const found =
    held.length > 0
      ? say`Sought together for ${names}; each combination was checked as a whole.`
      : say`No combination of stand-ins for ${names} holds together in this formula.`
  return complete ? found : `${found} ${say`Only the most promising combinations were tried.`}`
}

/** Stand-ins for several missing ingredients, sought together: what goes alone may not go together, and the reverse. */
export function jointSwaps(question: JointQuestion): SwapsReply {
  const { jobs, before, wishes } = question
  const roles = jobs.map(({ missing, role, swap }) => ({
    ingredient: missing.id,
    role: role.id,
    essential: swap.lost === 'no',
  }))
  const base = { roles, graphVersion: before.context.world.knowledge.version }
  const hanging = jobs.map((job) => hangsOn(before.context, job)).find((why) => why !== null)
  if (hanging !== undefined)
    return {
      ...base,
      outcome: 'no-safe-swap',
      why: hanging,
      swaps: [],
      refused: [],
      leaveOut: { verdict: 'no', why: hanging },
    }
  const found = searchTogether(question)
  return {
    ...base,
    outcome: found.held.length > 0 ? 'swaps' : 'no-safe-swap',
    why: whyOf(question, found),
    swaps: found.held.map((one) => jointSwapOf(one, before, wishes)),
    refused: refusals(found),
    leaveOut: worstLeaveOut(question),
  }
}
