import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { rebalance, takesUpDifference, withShares } from '#engine/dose/rebalance.ts'
import { rangeOfProperty, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Formula, Line, Phase } from '#engine/model/formula.ts'
import type { SwapLine } from '#engine/model/swap.ts'

/** A stand-in with its dose, ready to be put into the formula. */
export interface Placed {
  stand: Subject
  share_percent: number
}

/** Phase for a stand-in: what does not bear the heat goes into the cool-down, the rest where it dissolves. */
export function phaseFor(
  stand: Subject,
  replaced: Line | undefined,
  { hottest_c, form }: Pick<FormulaContext, 'hottest_c' | 'form'>,
): Phase | undefined {
  const hasWater = form !== 'anhydrous' && form !== 'powder'
  const max_c = rangeOfProperty(stand, 'heat_max_c')?.max
  if (max_c !== undefined && hottest_c !== null && hottest_c > max_c) return 'cool-down'
  const word = wordOf(stand, 'phase')
  if (word === 'cool-down') return 'cool-down'
  const solubility = wordOf(stand, 'solubility')
  if (replaced?.phase === 'cool-down' && word === 'either') return 'cool-down'
  if (solubility === 'oil' || solubility === 'silicone' || word === 'oil') return 'oil'
  // A formula without water has no water phase to go into: there it is stirred in where the missing one was.
  if (!hasWater) return replaced?.phase
  if (solubility === 'water' || word === 'water') return 'water'
  return replaced?.phase
}

/** Shares may not exceed the whole: a dose that would is cut to what the formula can hold. */
const FULL_PERCENT = 100

/**
 * The formula with lines taken out and others put in, doses as given, brought to 100 %. A stand-in that is in the
 * formula already is raised.
 */
export function replaceLines(context: FormulaContext, out: ReadonlySet<string>, placed: readonly Placed[]): Formula {
  const formula = withShares(context)
  const first = formula.lines.findIndex((line) => out.has(line.ingredient))
  const kept = formula.lines.filter((line) => !out.has(line.ingredient))
  const fixed = new Set<string>()
  const fresh: Line[] = []
  for (const { stand, share_percent } of placed) {
    const present = kept.find((line) => line.ingredient === stand.id)
    fixed.add(stand.id)
    if (present) {
      present.share_percent = Math.min(FULL_PERCENT, (present.share_percent ?? 0) + share_percent)
      continue
    }
    const phase = phaseFor(stand, formula.lines[first], context)
    fresh.push({ ingredient: stand.id, share_percent: Math.min(FULL_PERCENT, share_percent), ...(phase && { phase }) })
  }
  const at = first < 0 ? kept.length : Math.min(first, kept.length)
  const lines = [...kept.slice(0, at), ...fresh, ...kept.slice(at)]
  const filler = takesUpDifference(context, new Set([...out, ...fixed]))
  return { ...formula, lines: rebalance(lines, filler, fixed) }
}

/** Context of a formula that grew out of another: same form, so that a turned emulsion is found and not explained away. */
export const contextAfter = (formula: Formula, before: FormulaContext): FormulaContext =>
  buildContext({ ...formula, form: before.form }, before.world, before.placedOn)

/** The lines of the new formula that stand for the missing ones. */
export const linesOfStandIn = (formula: Formula, ids: ReadonlySet<string>): SwapLine[] =>
  formula.lines
    .filter((line) => ids.has(line.ingredient))
    .map(({ ingredient, share_percent = 0, phase }) => ({ ingredient, share_percent, ...(phase && { phase }) }))
