import { runChecks } from '#engine/checks/run.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Change, Wishes } from '#engine/model/swap.ts'
import { contextAfter, replaceLines } from './apply.ts'
import type { Placed } from './apply.ts'
import { costOf, forbidding, worsened } from './compare.ts'
import { REPAIRS } from './repairs.ts'

/** What came of putting a stand-in into the formula. */
export interface Trial {
  after: FormulaContext
  findings: Finding[]
  /** worse than before and forbidding: the stand-in is refused */
  conflict: Finding[]
  /** worse than before and allowed: costs rank */
  burdens: Finding[]
  repairs: Change[]
  /** what repairs and burdens take off the rank */
  cost: number
}

const MOST_REPAIRS = 3

interface State {
  context: FormulaContext
  findings: Finding[]
  worse: Finding[]
}

function look(context: FormulaContext, before: readonly Finding[], swapped: ReadonlySet<string>): State {
  const findings = runChecks(context)
  return { context, findings, worse: worsened(before, findings, swapped) }
}

/** Replaces lines, checks the whole formula, mends what can be mended, and compares with before. */
export function tryOut(
  before: { context: FormulaContext; findings: readonly Finding[] },
  out: ReadonlySet<string>,
  placed: readonly Placed[],
  wishes: Wishes,
): Trial {
  const { world } = before.context
  const swapped = new Set([...out, ...placed.map(({ stand }) => stand.id)])
  let state = look(contextAfter(replaceLines(before.context, out, placed), before.context), before.findings, swapped)
  const repairs: Change[] = []
  let cost = 0
  for (let round = 0; round < MOST_REPAIRS; round++) {
    const forbidden = forbidding(state.worse, world)
    if (forbidden.length === 0) break
    const repair = REPAIRS.map((kind) => kind(state.context, forbidden, wishes, out)).find((one) => one !== null)
    if (!repair) break
    const next = look(contextAfter(repair.formula, before.context), before.findings, swapped)
    // A repair that mends nothing is no repair.
    if (forbidding(next.worse, world).length >= forbidden.length) break
    state = next
    repairs.push(repair.change)
    cost += repair.cost
  }
  // A stop that was there before is no fault of the stand-in, but nothing with a stop may be proposed.
  const stops = state.findings.filter(({ severity }) => severity === 'stop')
  const conflict = [...new Set([...forbidding(state.worse, world), ...stops])]
  const burdens = state.worse.filter((finding) => !conflict.includes(finding))
  return {
    after: state.context,
    findings: state.findings,
    conflict,
    burdens,
    repairs,
    cost: cost + costOf(burdens, world),
  }
}
