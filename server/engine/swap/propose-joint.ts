import { sourcesOf } from '#engine/checks/say.ts'
import type { Swap, Wishes } from '#engine/model/swap.ts'
import { roundTo } from '#engine/units/round.ts'
import { linesOfStandIn } from './apply.ts'
import { uncovered } from './assess.ts'
import type { Before } from './trial.ts'
import { criteriaTable } from './criteria-table.ts'
import { doseChange, evidenceOf, feelAndLabelChanges, orderChanges, whyText } from './explain.ts'
import { gradeOf } from './grade.ts'
import type { Combination } from './joint.ts'
import { pathTo } from './path.ts'

const WEAKEST_FIRST = ['memory', 'practice', 'published', 'measured'] as const

/** A combination that holds, as the caller gets it: one formula with all stand-ins in it. */
export function jointSwapOf({ options, trial, rank }: Combination, before: Before, wishes: Wishes): Swap {
  const { world, formula: asked } = before.context
  const { form: _form, ...formula } = trial.after.formula
  const evidence = options.map(({ candidate }) => evidenceOf(candidate))
  const ids = new Set(options.map(({ candidate }) => candidate.stand.id))
  return {
    grade: gradeOf(options, trial, rank),
    replaces: options.map(({ job }) => job.missing.id),
    role: options.map(({ job }) => job.role.id).join(' + '),
    lines: linesOfStandIn(trial.after.formula, ids),
    why: options.map(({ job, candidate }) => whyText(job, candidate, before.context)).join(' '),
    changes: [
      ...options.map(({ job, candidate, dose }) => doseChange(job, candidate, dose, before.context.world.say)),
      ...trial.repairs,
      ...options.flatMap(({ job, candidate }) => [
        ...orderChanges(candidate, trial.after, before.context, job),
        ...feelAndLabelChanges(job, candidate, { before: before.context, after: trial.after }),
      ]),
    ],
    formula: asked.form ? { ...formula, form: asked.form } : formula,
    findings: trial.findings(),
    path: options.flatMap(({ job, candidate }) => pathTo(job, candidate, world)),
    scores: { rank: roundTo(Math.max(0, Math.min(1, rank)), 3) },
    criteria: options.flatMap(({ job, candidate }) => criteriaTable(job, candidate.stand, world, wishes.weights)),
    open: [...new Set(options.flatMap(({ job, candidate }) => uncovered(job, candidate)))].sort(),
    companions: [],
    unknown: [
      ...new Set(options.flatMap(({ candidate, dose }) => [...candidate.likeness.unknown, ...dose.unknown])),
    ].sort(),
    evidence: WEAKEST_FIRST.find((one) => evidence.includes(one)) ?? 'memory',
    sources: sourcesOf(
      ...options.flatMap(({ candidate: { stated, claim } }) => [
        ...(stated ? [stated] : []),
        ...(claim ? [claim] : []),
      ]),
    ),
  }
}
