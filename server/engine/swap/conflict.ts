import { runRule } from '#engine/checks/run.ts'
import { nameOf } from '#engine/formula/say.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Line } from '#engine/model/formula.ts'
import { minimalSet, minimalSets } from './marco.ts'
import type { Fires } from './marco.ts'

/** Does the rule still object to the same subject when only these lines are left? */
function objectionTo(finding: Finding, { formula, world, form, placedOn }: FormulaContext): Fires<Line> {
  const subject = new Set(finding.about)
  return (lines) => {
    if (lines.length === 0) return false
    const part = buildContext({ ...formula, form, lines: [...lines] }, world, placedOn)
    return runRule(finding.rule, part).some(({ about }) => about.length === 0 || about.some((id) => subject.has(id)))
  }
}

const linesOf = ({ formula }: FormulaContext): Line[] => formula.lines.map(({ fills: _fills, ...line }) => line)

/**
 * The smallest set of lines that makes a finding arise: taking any one of them away silences the rule. A rule about
 * something that is lacking fires on few lines too; the set is then what calls for it.
 */
export function minimalLines(finding: Finding, context: FormulaContext): Line[] {
  const lines = linesOf(context)
  const fires = objectionTo(finding, context)
  return fires(lines) ? minimalSet(lines, fires) : lines.filter((line) => finding.about.includes(line.ingredient))
}

const nameIn = ({ world }: FormulaContext, id: string): string => {
  const subject = world.find(id)
  return subject ? nameOf(subject) : id
}

function restingOn(finding: Finding, lines: readonly Line[], context: FormulaContext): Finding {
  const facts = lines.map(({ ingredient, share_percent = 0 }) => ({
    fact: context.world.say`${nameIn(context, ingredient)} at ${share_percent} %`,
  }))
  const known = new Set(finding.because.map(({ fact }) => fact))
  return { ...finding, because: [...finding.because, ...facts.filter(({ fact }) => !known.has(fact))] }
}

/** A finding about no more than the lines without which it would not arise. */
export const minimalFinding = (finding: Finding, context: FormulaContext): Finding =>
  restingOn(finding, minimalLines(finding, context), context)

/** Up to `most` ways in which the same finding arises, each from a minimal set of lines. */
export function minimalFindings(finding: Finding, context: FormulaContext, most: number): Finding[] {
  const sets = minimalSets(linesOf(context), objectionTo(finding, context), most)
  if (sets.length === 0) return [minimalFinding(finding, context)]
  return sets.map((lines) => restingOn(finding, lines, context))
}
