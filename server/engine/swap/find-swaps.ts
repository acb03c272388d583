import { runChecks } from '#engine/checks/run.ts'
import { nameOf } from '#engine/checks/say.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { withShares } from '#engine/dose/rebalance.ts'
import type { Say } from '#engine/words/say.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Refusal, SwapsReply, Wishes } from '#engine/model/swap.ts'
import { refusalOf, swapOf } from './propose.ts'
import { aboutThese } from './about.ts'
import type { Assessed } from './assess.ts'
import { candidatesFor, inventoryCandidatesFor } from './candidates.ts'
import { giveUp } from './give-up.ts'
import { hangsOn } from './hangs-on.ts'
import { jobOf } from './job.ts'
import type { Job } from './job.ts'
import { jointSwaps } from './joint.ts'
import { lookAlikes } from './look-alikes.ts'
import { judgeLeaveOut } from './leave-out.ts'
import { search } from './search.ts'
import type { Before, Trial } from './trial.ts'
import { inVariety } from './variety.ts'

export interface SwapQuestion {
  formula: Formula
  missing: readonly string[]
  wishes?: Wishes
  /** how these would do, or why not; only with one missing */
  about?: readonly string[]
  limit?: number
}

const USUAL_LIMIT = 8
/** So many more are found than asked for, to have a choice among kinds. */
const SPARE = 4

const roleOf = ({ missing, role, swap }: Job): SwapsReply['roles'][number] => ({
  ingredient: missing.id,
  role: role.id,
  essential: swap.lost === 'no',
})

function notKnown(world: World, ids: readonly string[]): SwapsReply {
  const names = ids.map((id) => world.find(id)?.inci ?? id).join(', ')
  return {
    outcome: 'not-known',
    why: world.say`What ${names} does in a formula is not recorded, so nothing can be proposed in its place.`,
    roles: [],
    swaps: [],
    refused: [],
    leaveOut: { verdict: 'no', why: world.say`Not known.` },
    graphVersion: world.knowledge.version,
  }
}

/** The formula as it stands, checked, with every share filled in. */
export function lookBefore(world: World, formula: Formula): Before {
  const filled = withShares(buildContext(formula, world))
  const context = buildContext(filled, world)
  return { context, findings: runChecks(context) }
}

/** Former and second names in wishes give way to the id of the record; names of classes stay. */
function withRecordIds(wishes: Wishes, world: World): Wishes {
  const own = (id: string) => (world.knowledge.classes.has(id) ? id : (world.find(id)?.id ?? id))
  return {
    ...wishes,
    ...(wishes.only && { only: wishes.only.map(own) }),
    ...(wishes.without && { without: wishes.without.map(own) }),
  }
}

const hasTrial = (one: Assessed): one is Assessed & { trial: Trial } => one.trial !== null

function noSwapText(job: Job, before: Before, refused: readonly Assessed[]): string {
  const { say } = before.context.world
  const first = refused.find(({ refusedBecause }) => refusedBecause !== null)
  const label = say.inside(job.role.label)
  const form = say.text(before.context.form.replaceAll('-', ' '))
  return [
    say`Nothing on record does the job of ${nameOf(job.missing)} (${label}) in this formula without making it worse.`,
    ...(first ? [say`The nearest fails: ${first.refusedBecause ?? ''}.`] : []),
    say`The ${form} would have to be reformulated around another ${label}.`,
  ].join(' ')
}

/** Whatever it would have done alone: the whole formula hangs on the missing one. */
function refusedByHanging(refusal: Refusal, { missing, role }: Job, hanging: string, say: Say): Refusal {
  if (refusal.conflict.length > 0) return refusal
  const because = [
    {
      fact: say`${nameOf(missing)} is the ${say.inside(role.label)} here`,
      claim: `${missing.id}>plays>role:${role.id}`,
    },
  ]
  const finding = {
    rule: 'formula-hangs-on-it',
    severity: 'warn' as const,
    about: [missing.id],
    message: hanging,
    because,
    sources: ['practice'],
  }
  return { ...refusal, conflict: [finding], message: hanging }
}

const INVENTORY_SHOWN = 4
/** Asked for on purpose; known by so little that none would pass the usual bar. */
const LEAST_RANK_OF_INVENTORY = 0.2

const ofInventory = (job: Job, before: Before, wishes: Wishes): Assessed[] =>
  search(
    job,
    inventoryCandidatesFor(job, before.context, wishes),
    before,
    wishes,
    INVENTORY_SHOWN,
    LEAST_RANK_OF_INVENTORY,
  ).offered

/** Stand-ins for one missing ingredient. */
function swapsForOne(
  world: World,
  job: Job,
  before: Before,
  wishes: Wishes,
  limit: number,
  missing: ReadonlySet<string>,
): SwapsReply {
  const base = {
    roles: [roleOf(job)],
    leaveOut: judgeLeaveOut(before, job),
    graphVersion: world.knowledge.version,
  }
  const hanging = hangsOn(before.context, job)
  const candidates = candidatesFor(job, before.context, missing, wishes)
  const { offered: ranked, refused } = search(job, candidates, before, wishes, limit + SPARE)
  const offered = inVariety(ranked, {
    world,
    subjectOf: ({ candidate }) => candidate.stand,
    rankOf: ({ rank }) => rank,
  }).slice(0, limit)
  if (wishes.alsoInventory) offered.push(...ofInventory(job, before, wishes))
  if (hanging !== null) {
    const looksRight = [...offered, ...refused]
      .slice(0, limit)
      .map((one) => refusedByHanging(refusalOf(job, one, before), job, hanging, world.say))
    return {
      outcome: 'no-safe-swap',
      why: hanging,
      swaps: [],
      refused: looksRight,
      ...base,
      leaveOut: { verdict: 'no', why: hanging },
    }
  }
  const swaps = offered.filter(hasTrial).map((one) => swapOf(job, one, before, wishes))
  const shown = new Set([...offered, ...refused].map(({ candidate }) => candidate.stand.id))
  return {
    outcome: swaps.length > 0 ? 'swaps' : 'no-safe-swap',
    why:
      swaps.length > 0
        ? world.say`Sought as ${world.say.inside(job.role.label)}, the job of ${nameOf(job.missing)} in this formula.`
        : noSwapText(job, before, refused),
    swaps,
    refused: [...refused.map((one) => refusalOf(job, one, before)), ...lookAlikes(job, before.context, shown)],
    ...base,
  }
}

/**
 * What can stand in for up to three missing ingredients in a formula: found over the roles they play here, re-dosed,
 * checked as a whole, compared with the formula before, ranked.
 */
export function findSwaps(world: World, question: SwapQuestion): SwapsReply {
  const { formula, missing, limit = USUAL_LIMIT } = question
  const wishes = withRecordIds(question.wishes ?? {}, world)
  const before = lookBefore(world, formula)
  const jobs = missing.map((id) => {
    const subject = world.find(id)
    return subject && jobOf(before.context, subject)
  })
  const known = jobs.filter((job): job is Job => job !== null)
  const [only] = known
  if (!only || known.length < jobs.length) return notKnown(world, missing)
  const ids = new Set(known.map((job) => job.missing.id))
  const ask = (asked: Wishes): SwapsReply =>
    known.length === 1
      ? swapsForOne(world, only, before, asked, limit, ids)
      : jointSwaps({ jobs: known, before, wishes: asked, limit })
  const reply = ask(wishes)
  const about = known.length === 1 && question.about ? aboutThese(question.about, only, before, wishes, reply) : []
  const ways = reply.outcome === 'no-safe-swap' ? giveUp(wishes, ask, world.say) : []
  return { ...reply, ...(about.length > 0 && { about }), ...(ways.length > 0 && { giveUp: ways }) }
}
