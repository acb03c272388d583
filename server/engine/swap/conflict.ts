import { runRule } from '#engine/checks/run.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Line } from '#engine/model/formula.ts'

/** Does the rule still object to the same subject when only these lines are left? */
type StillFires = (lines: readonly Line[]) => boolean

/** QuickXplain (Junker 2004): a subset-minimal part of `open` that, beside `kept`, makes the rule fire. */
function explain(kept: readonly Line[], added: readonly Line[], open: readonly Line[], fires: StillFires): Line[] {
  if (added.length > 0 && fires(kept)) return []
  if (open.length <= 1) return [...open]
  const half = Math.ceil(open.length / 2)
  const [first, second] = [open.slice(0, half), open.slice(half)]
  const fromSecond = explain([...kept, ...first], first, second, fires)
  const fromFirst = explain([...kept, ...fromSecond], fromSecond, first, fires)
  return [...fromFirst, ...fromSecond]
}

/**
 * The smallest set of lines that makes a finding arise: taking any one of them away silences the rule. A rule about
 * something that is lacking fires on few lines too; the set is then what calls for it.
 */
export function minimalLines(finding: Finding, context: FormulaContext): Line[] {
  const { formula, world, form } = context
  const subject = new Set(finding.about)
  const fires: StillFires = (lines) => {
    if (lines.length === 0) return false
    const part = buildContext({ ...formula, form, lines: [...lines] }, world, context.placedOn)
    return runRule(finding.rule, part).some(({ about }) => about.length === 0 || about.some((id) => subject.has(id)))
  }
  const lines = formula.lines.map(({ fills: _fills, ...line }) => line)
  if (!fires(lines)) return lines.filter((line) => subject.has(line.ingredient))
  return explain([], [], lines, fires)
}

/** A finding about no more than the lines without which it would not arise. */
export function minimalFinding(finding: Finding, context: FormulaContext): Finding {
  const lines = minimalLines(finding, context)
  const facts = lines.map((line) => ({ fact: `${world(context, line.ingredient)} at ${line.share_percent ?? 0} %` }))
  const known = new Set(finding.because.map(({ fact }) => fact))
  return { ...finding, because: [...finding.because, ...facts.filter(({ fact }) => !known.has(fact))] }
}

const world = (context: FormulaContext, id: string): string => context.world.find(id)?.inci ?? id
