import type { FormulaContext } from '#engine/formula/context.ts'
import { bufferingAt } from '#engine/dose/equivalents.ts'
import { holdsHere } from '#engine/formula/when.ts'
import { nearestOfInventory } from '#engine/graph/inventory-players.ts'
import { wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Must, NotFor, PlaysRole, StandsFor } from '#engine/model/records.ts'
import type { Wishes } from '#engine/model/swap.ts'
import type { Job } from './job.ts'
import { likeness } from './similarity.ts'
import type { Likeness, Moved } from './similarity.ts'

/** Something that might stand in, before it is put into the formula. */
export interface Candidate {
  stand: Subject
  /** its statement about the role for which it is sought, nearest first */
  claim: PlaysRole | undefined
  /** steps in the role tree between the job and the role that it plays; 0 for the same role */
  distance: number
  likeness: Likeness
  stated: StandsFor | undefined
  denied: NotFor | undefined
  failedMust: Must | undefined
  /** before the checks: the best that the rank can become */
  promise: number
}

/** The statement of a stand-in about the role nearest to the job, among those that hold in this formula. */
function nearestClaim(
  job: Job,
  stand: Subject,
  context: FormulaContext,
): { claim: PlaysRole | undefined; distance: number } {
  const { roles } = context.world
  let best: { claim: PlaysRole | undefined; distance: number } = { claim: undefined, distance: Infinity }
  stand.roles.forEach((claim, index) => {
    if (claim.when && !holdsHere(claim.when, stand, context, job.share_percent)) return
    // A side role is a weaker promise than the main one.
    const distance = roles.distance(job.role.id, claim.role) + (index === 0 ? 0 : Math.min(1, index * 0.4))
    if (distance < best.distance) best = { claim, distance }
  })
  return best
}

/** What is not known fails nobody. */
function hardlyBuffers(least: number, stand: Subject, { ph, world }: FormulaContext): boolean {
  const buffering = ph === null ? undefined : bufferingAt(stand, ph, world.knowledge.acids)
  return buffering !== undefined && buffering < least
}

function failedMust(musts: readonly Must[], stand: Subject, context: FormulaContext): Must | undefined {
  return musts.find((must) => {
    if (must.buffers !== undefined) return hardlyBuffers(must.buffers, stand, context)
    if (must.class) return !stand.classes.has(must.class)
    const word = must.word ? wordOf(stand, must.word) : undefined
    return word !== undefined && !(must.one_of ?? []).includes(word)
  })
}

const GRADE_WORTH = { good: 0.16, workable: 0.07 } as const
/** A statement about a whole class says less about the pair. */
const CLASS_STATEMENT = 0.5

function statedFor(job: Job, stand: Subject, context: FormulaContext): StandsFor | undefined {
  const fitting = stand.standsFor.filter(
    (claim) =>
      (claim.for === job.missing.id ||
        (claim.for.startsWith('class:') && job.missing.classes.has(claim.for.slice(6)))) &&
      holdsHere(claim.when, stand, context, job.share_percent),
  )
  return fitting.find((claim) => claim.for === job.missing.id) ?? fitting[0]
}

const deniedFor = (job: Job, stand: Subject, context: FormulaContext): NotFor | undefined =>
  stand.notFor.find((claim) => claim.for === job.missing.id && holdsHere(claim.when, stand, context, job.share_percent))

export const WEIGHTS = { likeness: 0.44, role: 0.2, usual: 0.3 }

function statementWorth(stated: StandsFor | undefined): number {
  if (!stated) return 0
  return GRADE_WORTH[stated.grade ?? 'workable'] * (stated.for.startsWith('class:') ? CLASS_STATEMENT : 1)
}

/** Worth of the five grades of `usual`: what hardly anyone sells to a small maker is as good as missing too. */
const WORTH_OF_USUAL = [-0.3, 0.2, 0.5, 0.75, 1] as const
const LEAST_USUAL = 1

/** How usual a stand-in is, up to 1: what a small maker can get comes first among equals. */
export function usualness(stand: Subject): number {
  const grade = stand.facts.get('usual')?.[0]?.value ?? LEAST_USUAL
  return WORTH_OF_USUAL[grade - LEAST_USUAL] ?? 0
}

export function rate(job: Job, stand: Subject, context: FormulaContext, moved: Moved): Candidate {
  const { claim, distance } = nearestClaim(job, stand, context)
  const like = likeness(job.swap.criteria, job.missing, stand, context.world, moved)
  const stated = statedFor(job, stand, context)
  const role = distance === Infinity ? 0 : 1 / (1 + 0.6 * distance)
  const promise =
    WEIGHTS.likeness * like.total +
    WEIGHTS.role * (moved['role'] ?? 1) * role +
    WEIGHTS.usual * (moved['usual'] ?? 1) * usualness(stand) +
    statementWorth(stated)
  return {
    stand,
    claim,
    distance,
    likeness: like,
    stated,
    denied: deniedFor(job, stand, context),
    failedMust: failedMust(job.swap.must, stand, context),
    promise,
  }
}

type Ranked = Pick<Wishes, 'weights'>

const inOrder = (pool: Iterable<Subject>, job: Job, context: FormulaContext, { weights = {} }: Ranked): Candidate[] =>
  [...pool]
    .map((stand) => rate(job, stand, context, weights))
    .sort((a, b) => b.promise - a.promise || (a.stand.id < b.stand.id ? -1 : 1))

/** All that play the role sought (by traversal of the role tree) or say that they stand in; the best promise first. */
export function candidatesFor(
  job: Job,
  context: FormulaContext,
  missing: ReadonlySet<string>,
  wishes: Ranked = {},
): Candidate[] {
  const { world } = context
  const pool = new Set<Subject>([
    ...world.players(job.swap.scope),
    ...world.standInsFor(job.missing).map(({ stand }) => stand),
  ])
  const free = [...pool].filter(
    (stand) =>
      !missing.has(stand.id) && !(missing.size > 1 && stand.madeOf.some((part) => missing.has(part.ingredient))),
  )
  return inOrder(free, job, context, wishes)
}

/** So many names of the inventory are looked at when they are asked for. */
const MOST_OF_INVENTORY = 60

/** Names of which only functions and name are known, that play the role and share classes with the missing one. */
export const inventoryCandidatesFor = (job: Job, context: FormulaContext, wishes: Ranked = {}): Candidate[] =>
  inOrder(nearestOfInventory(context.world, job.missing, job.swap.scope, MOST_OF_INVENTORY), job, context, wishes)
