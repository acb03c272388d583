import type { World } from '#engine/graph/world.ts'
import type { Say } from '#engine/words/say.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { PlaysRole } from '#engine/model/records.ts'
import type { Swap, SwapsReply } from '#engine/model/swap.ts'
import { wordOf } from '#engine/graph/subject.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { roundTo } from '#engine/units/round.ts'
import { candidatesFor } from './candidates.ts'
import type { Candidate } from './candidates.ts'
import { criteriaTable } from './criteria-table.ts'
import { evidenceOf, feelAndLabelChanges, whyText } from './explain.ts'
import type { Job } from './job.ts'
import { isOtherKind, servesThePurpose } from './other-kind.ts'
import { doseFor } from './assess.ts'
import { pathTo } from './path.ts'
import { LEAST_RANK } from './search.ts'

export interface StandInsQuestion {
  role?: string
  product?: 'leave-on' | 'rinse-off'
  market?: 'eu' | 'us'
}

const STAND_INS = 12
const toCheck = (say: Say): string[] => [
  say`the pH of the recipe against both pH windows`,
  say`the hottest point of the process`,
  say`charge, salts and alcohol of the neighbours`,
  say`legal limits for the product and where on the body it is used`,
  say`the preservative, after the swap`,
]

/** A line alone: there is no recipe, so nothing can be checked as a whole. */
const alone = (subject: Subject, { product = 'leave-on', market = 'eu' }: StandInsQuestion): Formula => ({
  market,
  product,
  ph: null,
  hottest_c: null,
  lines: [{ ingredient: subject.id, share_percent: 100 }],
})

function swapOf(job: Job, candidate: Candidate, context: ReturnType<typeof buildContext>): Swap {
  const dose = doseFor(job, candidate, context)
  return {
    grade: candidate.promise >= 0.7 && servesThePurpose(candidate) ? 'good' : 'workable',
    replaces: [job.missing.id],
    role: job.role.id,
    lines: [{ ingredient: candidate.stand.id, share_percent: roundTo(dose.share_percent, 3) }],
    why: whyText(job, candidate, context),
    changes: [
      { kind: 'dose', text: dose.how, ingredient: candidate.stand.id },
      ...feelAndLabelChanges(job, candidate, { before: context }),
    ],
    findings: [],
    toCheck: toCheck(context.world.say),
    path: pathTo(job, candidate, context.world),
    criteria: criteriaTable(job, candidate.stand, context.world),
    open: [],
    companions: [],
    scores: { ...candidate.likeness.scores, rank: roundTo(Math.min(1, candidate.promise), 3) },
    unknown: [...new Set([...candidate.likeness.unknown, ...dose.unknown])].sort(),
    evidence: evidenceOf(candidate),
    sources: [],
  }
}

function jobFor(world: World, subject: Subject, wanted: string | undefined): Job | null {
  const claim: PlaysRole | undefined = wanted
    ? subject.roles.find(({ role }) => world.roles.above(role).includes(wanted))
    : subject.roles[0]
  const role = claim && world.knowledge.roles.get(claim.role)
  if (!claim || !role) return null
  const { typical, max = 100, min = 0 } = claim.level_percent ?? {}
  return { missing: subject, share_percent: typical ?? (min + max) / 2, role, claim, swap: role.swap, others: [] }
}

/** Stand-ins in general, no recipe at hand: each comes with what has to be checked once there is one. */
export function standIns(world: World, id: string, question: StandInsQuestion = {}): SwapsReply {
  const subject = world.find(id)
  const job = subject && jobFor(world, subject, question.role)
  const { say } = world
  const base = {
    refused: [],
    leaveOut: { verdict: 'workable' as const, why: say`Whether it can be left out depends on the recipe.` },
    graphVersion: world.knowledge.version,
  }
  if (!subject || !job)
    return { ...base, outcome: 'not-known', why: say`No role of this ingredient is recorded.`, roles: [], swaps: [] }
  const context = buildContext(alone(subject, question), world)
  const roles = [{ ingredient: subject.id, role: job.role.id, essential: job.swap.lost === 'no' }]
  if (job.swap.irreplaceable) return { ...base, outcome: 'no-safe-swap', why: job.swap.irreplaceable, roles, swaps: [] }
  const swaps = candidatesFor(job, context, new Set([subject.id]))
    .filter(
      (one) =>
        !one.denied &&
        !one.failedMust &&
        !isOtherKind(one) &&
        one.promise >= LEAST_RANK &&
        !isBanned(one.stand, question, context),
    )
    .slice(0, STAND_INS)
    .map((one) => swapOf(job, one, context))
  const why =
    swaps.length > 0
      ? say`Sought as ${say.inside(job.role.label)}; check against the recipe.`
      : say`Nothing on record plays this role.`
  return { ...base, outcome: swaps.length > 0 ? 'swaps' : 'no-safe-swap', why, roles, swaps }
}

/** Prohibited in every product of this market. */
const isBanned = (stand: Subject, { market = 'eu' }: StandInsQuestion, _context: unknown): boolean =>
  wordOf(stand, 'phase') === undefined
    ? false
    : stand.limits.some(
        (limit) =>
          limit.market === market &&
          limit.kind === 'law' &&
          limit.rows.some((row) => row.prohibited && Object.keys(row.scope).length === 0 && !row.applies_from),
      )
