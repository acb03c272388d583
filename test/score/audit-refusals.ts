import { runRule } from '#engine/checks/run.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { checkFormula, findSwaps, idOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Line } from '#engine/model/formula.ts'
import { assess, prepare } from '#engine/swap/assess.ts'
import { candidatesFor } from '#engine/swap/candidates.ts'
import { minimalLines } from '#engine/swap/conflict.ts'
import { lookBefore } from '#engine/swap/find-swaps.ts'
import { jobOf } from '#engine/swap/job.ts'
import { formulaOf } from './swap-cases.ts'
import type { SwapCase } from './swap-cases.ts'

export interface Audit {
  conflicts: number
  notMinimal: number
  changes: number
  changesThatFail: number
}

function fires(finding: Finding, lines: readonly Line[], context: FormulaContext): boolean {
  if (lines.length === 0) return false
  const part = buildContext({ ...context.formula, form: context.form, lines: [...lines] }, context.world)
  const subject = new Set(finding.about)
  return runRule(finding.rule, part).some(({ about }) => about.length === 0 || about.some((id) => subject.has(id)))
}

/** Deleting any member of a conflict must silence the rule. */
function isMinimal(finding: Finding, context: FormulaContext): boolean {
  const lines = minimalLines(finding, context)
  return (
    lines.length === 1 ||
    lines.every(
      (line) =>
        !fires(
          finding,
          lines.filter((other) => other !== line),
          context,
        ),
    )
  )
}

/** Every refusal of a case: is each conflict minimal, and does each change with which it would hold work? */
function auditCase(world: World, one: SwapCase, audit: Audit): void {
  const formula = formulaOf(one)
  const before = lookBefore(world, formula)
  const missing = world.find(idOf(one.missing))
  const job = missing && jobOf(before.context, missing)
  if (!job) return
  for (const candidate of candidatesFor(job, before.context, new Set([job.missing.id])).slice(0, 20)) {
    const { trial } = assess(job, prepare(job, candidate, before), before, {})
    for (const finding of trial?.conflict.slice(0, 3) ?? []) {
      audit.conflicts += 1
      if (trial && !isMinimal(finding, trial.after)) audit.notMinimal += 1
    }
  }
  const reply = findSwaps(world, { formula, missing: [job.missing.id] })
  for (const way of reply.refused.flatMap(({ wouldWork = [] }) => wouldWork)) {
    audit.changes += 1
    if (checkFormula(world, way.formula).verdict === 'stop') audit.changesThatFail += 1
  }
}

export function auditRefusals(world: World, cases: readonly SwapCase[]): Audit {
  const audit: Audit = { conflicts: 0, notMinimal: 0, changes: 0, changesThatFail: 0 }
  for (const one of cases) auditCase(world, one, audit)
  return audit
}
