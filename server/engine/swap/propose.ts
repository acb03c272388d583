import { nameOf, sourcesOf } from '#engine/checks/say.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Say } from '#engine/words/say.ts'
import type { Refusal, Swap, Wishes } from '#engine/model/swap.ts'
import { roundTo } from '#engine/units/round.ts'
import { linesOfStandIn } from './apply.ts'
import { denialDecides, uncovered } from './assess.ts'
import type { Assessed } from './assess.ts'
import { companionsFor } from './companions.ts'
import { minimalFinding, minimalFindings } from './conflict.ts'
import { criteriaTable } from './criteria-table.ts'
import { doseChange, evidenceOf, feelAndLabelChanges, orderChanges, whyText } from './explain.ts'
import { gradeOf } from './grade.ts'
import type { Job } from './job.ts'
import { pathTo } from './path.ts'
import type { Before, Trial } from './trial.ts'
import { wouldWork } from './would-work.ts'

/** A proposal as the caller gets it. */
export function swapOf(job: Job, assessed: Assessed & { trial: Trial }, before: Before, wishes: Wishes): Swap {
  const { candidate, dose, trial, rank } = assessed
  const ids = new Set([candidate.stand.id])
  const lines = linesOfStandIn(trial.after.formula, ids)
  const open = uncovered(job, candidate)
  const { world } = before.context
  const { say } = world
  const openWords = open.map((role) => say.inside(world.knowledge.roles.get(role)?.label ?? role))
  const leftOpen = open.length > 0 ? say` Left open here: ${openWords.join(', ')}.` : ''
  const { form: _form, ...formula } = trial.after.formula
  return {
    grade: gradeOf([assessed], trial, rank),
    replaces: [job.missing.id],
    role: job.role.id,
    lines,
    why: whyText(job, candidate, before.context) + leftOpen,
    changes: [
      doseChange(job, candidate, dose, say),
      ...trial.repairs,
      ...orderChanges(candidate, trial.after, before.context, job),
      ...feelAndLabelChanges(job, candidate, { before: before.context, after: trial.after }),
    ],
    formula: before.context.formula.form ? { ...formula, form: before.context.formula.form } : formula,
    findings: trial.findings(),
    path: pathTo(job, candidate, world),
    criteria: criteriaTable(job, candidate.stand, world, wishes.weights),
    open,
    companions: companionsFor(open, job, trial, { before, wishes }),
    scores: {
      ...Object.fromEntries(Object.entries(candidate.likeness.scores).map(([k, v]) => [k, roundTo(v, 3)])),
      rank: roundTo(Math.max(0, Math.min(1, rank)), 3),
    },
    unknown: [...new Set([...candidate.likeness.unknown, ...dose.unknown])].sort(),
    evidence: evidenceOf(candidate),
    sources: sourcesOf(...(candidate.stated ? [candidate.stated] : []), ...(candidate.claim ? [candidate.claim] : [])),
  }
}

/** So many ways in which it fails are worth telling. */
const MOST_CONFLICTS = 3

/** Different rules first; where one rule alone refuses, the different ways in which it comes to do so. */
function conflictOf({ conflict, after }: Trial): Finding[] {
  const [first, ...others] = conflict
  if (!first) return []
  if (others.length === 0) return minimalFindings(first, after, MOST_CONFLICTS)
  return conflict.slice(0, MOST_CONFLICTS).map((finding) => minimalFinding(finding, after))
}

/** A refusal with the smallest conflicts behind it, and what would have to be otherwise. */
export function refusalOf(job: Job, assessed: Assessed, before: Before): Refusal {
  const { candidate, dose, trial, refusedBecause } = assessed
  const { say } = before.context.world
  const placed = { stand: candidate.stand, share_percent: dose.share_percent }
  const changes = trial ? wouldWork({ before, out: new Set([job.missing.id]), placed, conflict: trial.conflict }) : []
  return {
    lines: [{ ingredient: candidate.stand.id, share_percent: dose.share_percent }],
    conflict: trial ? conflictOf(trial) : [ownConflict(job, assessed, say)],
    message:
      refusedBecause ?? say`${nameOf(candidate.stand)} at ${say.short(dose.share_percent)} % does not do the job`,
    ...(changes.length > 0 && { wouldWork: changes }),
  }
}

/** A refusal that needs no trial: the graph says so, or a hard condition of the role fails. */
function ownConflict(job: Job, { candidate, refusedBecause }: Assessed, say: Say): Finding {
  const { stand } = candidate
  const denied = denialDecides(candidate) ? candidate.denied : undefined
  return {
    rule: denied ? 'does-not-stand-in-for' : 'hard-condition',
    severity: 'warn',
    about: [stand.id],
    message: refusedBecause ?? '',
    because: [
      denied
        ? {
            fact: denied.says || say`does not stand in for it`,
            claim: `${stand.id}>does-not-stand-in-for>${job.missing.id}`,
          }
        : { fact: say`${job.role.label}: ${candidate.failedMust?.why ?? refusedBecause ?? ''}` },
    ],
    sources: denied ? [denied.source] : ['practice'],
  }
}
