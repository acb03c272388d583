import type { Formula, Line } from '#engine/model/formula.ts'
import { roundTo } from '#engine/units/round.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { plays, wordOf } from '#engine/graph/subject.ts'

export const SHARE_DECIMALS = 4

/** The id whose line takes up the difference when a dose changes: water, else the main oil, else the largest line. */
export function takesUpDifference(context: FormulaContext, without: ReadonlySet<string>): string | null {
  const rest = context.lines.filter(({ subject }) => !without.has(subject.id))
  const largest = (lines: typeof rest) =>
    [...lines].sort((a, b) => b.share_percent - a.share_percent || (a.subject.id < b.subject.id ? -1 : 1))[0]?.subject
      .id
  const water = rest.filter(({ subject }) => plays(subject, 'water-phase'))
  const oils = rest.filter(({ subject }) => plays(subject, 'emollient') && wordOf(subject, 'form') === 'liquid')
  return largest(water) ?? largest(oils) ?? largest(rest) ?? null
}

const total = (lines: readonly Line[]): number => lines.reduce((sum, line) => sum + (line.share_percent ?? 0), 0)

/** Rounds shares and gives the rounding rest to the largest line, so that the sum is 100 to the last digit. */
function rounded(lines: readonly Line[]): Line[] {
  const out = lines.map((line) => ({ ...line, share_percent: roundTo(line.share_percent ?? 0, SHARE_DECIMALS) }))
  const largest = out.reduce((a, b) => (b.share_percent > a.share_percent ? b : a))
  largest.share_percent = roundTo(largest.share_percent + 100 - total(out), SHARE_DECIMALS)
  return out.filter((line) => line.share_percent > 0)
}

/** Place of the largest line of an ingredient, -1 when it has none. */
const largestOf = (lines: readonly Line[], id: string | null): number =>
  lines.reduce(
    (best, line, at) =>
      line.ingredient === id && (line.share_percent ?? 0) > (lines[best]?.share_percent ?? -1) ? at : best,
    -1,
  )

/**
 * Brings the shares of a formula to 100 %: the filler takes up the difference; where that would leave it nothing, all
 * lines but the fixed ones are scaled.
 *
 * @param lines   lines with shares [%], any sum
 * @param filler  id of the line that takes up the difference, or null
 * @param fixed   ids whose doses were just worked out and stay
 */
export function rebalance(lines: readonly Line[], filler: string | null, fixed: ReadonlySet<string>): Line[] {
  const difference = 100 - total(lines)
  const index = largestOf(lines, filler)
  const room = (lines[index]?.share_percent ?? 0) + difference
  if (index >= 0 && room > 0) {
    return rounded(lines.map((line, at) => (at === index ? { ...line, share_percent: room } : line)))
  }
  const fixedTotal = total(lines.filter((line) => fixed.has(line.ingredient)))
  const looseTotal = total(lines) - fixedTotal
  const factor = looseTotal > 0 ? (100 - fixedTotal) / looseTotal : 0
  if (factor <= 0) {
    const all = 100 / total(lines)
    return rounded(lines.map((line) => ({ ...line, share_percent: (line.share_percent ?? 0) * all })))
  }
  return rounded(
    lines.map((line) =>
      fixed.has(line.ingredient) ? line : { ...line, share_percent: (line.share_percent ?? 0) * factor },
    ),
  )
}

/** The formula with every share filled in and no filling line left. */
export function withShares(context: FormulaContext): Formula {
  const { formula } = context
  const filled_percent = 100 - total(formula.lines)
  const lines = formula.lines.map((line): Line => {
    const { fills: _fills, ...rest } = line
    return { ...rest, share_percent: roundTo(line.share_percent ?? Math.max(0, filled_percent), SHARE_DECIMALS) }
  })
  return { ...formula, lines: lines.filter((line) => (line.share_percent ?? 0) > 0) }
}
