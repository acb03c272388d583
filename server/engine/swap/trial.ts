import { inOrder, runRules } from '#engine/checks/run.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Change, Wishes } from '#engine/model/swap.ts'
import { once } from '#engine/units/once.ts'
import { contextAfter, replaceLines } from './apply.ts'
import type { Placed } from './apply.ts'
import { costOf, forbidding, rulesByVoice, worsened } from './compare.ts'
import { REPAIRS } from './repairs.ts'

/** The formula before the swap, with all findings on it. */
export interface Before {
  context: FormulaContext
  findings: readonly Finding[]
}

/** What came of putting a stand-in into the formula. */
export interface Trial {
  after: FormulaContext
  /** all findings on it; worked out when asked for */
  findings(): Finding[]
  /** worse than before and forbidding: the stand-in is refused */
  conflict: Finding[]
  /** worse than before and allowed: costs rank; not looked for where there is a conflict */
  burdens: Finding[]
  repairs: Change[]
  /** what repairs and burdens take off the rank */
  cost: number
}

const MOST_REPAIRS = 3

interface Look {
  context: FormulaContext
  /** of the rules that can forbid */
  findings: Finding[]
  /** those worse than before */
  worse: Finding[]
  forbidden: Finding[]
  conflict: Finding[]
}

/** Looks with the rules that can forbid alone: the others have no say in whether a stand-in holds. */
export function look(context: FormulaContext, before: Before, swapped: ReadonlySet<string>): Look {
  const { world } = context
  const findings = runRules(rulesByVoice(world).forbid, context)
  const worse = worsened(before.findings, findings, swapped)
  const forbidden = forbidding(worse, world)
  // A stop that was there before is no fault of the stand-in, but nothing with a stop may be proposed.
  const stops = findings.filter(({ severity }) => severity === 'stop')
  return { context, findings, worse, forbidden, conflict: [...new Set([...forbidden, ...stops])] }
}

interface Mended {
  state: Look
  repairs: Change[]
  cost: number
}

function mend(first: Look, before: Before, swapped: ReadonlySet<string>, wishes: Wishes, out: ReadonlySet<string>) {
  const mended: Mended = { state: first, repairs: [], cost: 0 }
  for (let round = 0; round < MOST_REPAIRS && mended.state.forbidden.length > 0; round++) {
    const { context, forbidden } = mended.state
    const repair = REPAIRS.map((kind) => kind(context, forbidden, wishes, out)).find((one) => one !== null)
    if (!repair) break
    const next = look(contextAfter(repair.formula, before.context), before, swapped)
    // A repair that mends nothing is no repair.
    if (next.forbidden.length >= forbidden.length) break
    mended.state = next
    mended.repairs.push(repair.change)
    mended.cost += repair.cost
  }
  return mended
}

/** Replaces lines, checks the formula, mends what can be mended, and compares with before. */
export function tryOut(before: Before, out: ReadonlySet<string>, placed: readonly Placed[], wishes: Wishes): Trial {
  const { world } = before.context
  const swapped = new Set([...out, ...placed.map(({ stand }) => stand.id)])
  const first = look(contextAfter(replaceLines(before.context, out, placed), before.context), before, swapped)
  const { state, repairs, cost } = mend(first, before, swapped, wishes, out)
  const { context, conflict } = state
  const { cost: costly, silent } = rulesByVoice(world)
  const others = once(() => runRules(costly, context))
  const told = conflict.length > 0 ? [] : worsened(before.findings, others(), swapped)
  const burdens = [...state.worse.filter((finding) => !conflict.includes(finding)), ...told]
  return {
    after: context,
    findings: once(() => inOrder([...state.findings, ...others(), ...runRules(silent, context)])),
    conflict,
    burdens,
    repairs,
    cost: cost + costOf(burdens, world),
  }
}
