import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { apportion } from './apportion.ts'
import type { Item } from './item.ts'

const text = (line: FormulaLine): string => `${line.subject.id} ${line.phase} ${line.strength_percent ?? ''}`

/** By id, then phase, then strength: no two lines of a context share all three. */
const byText = (a: FormulaLine, b: FormulaLine): number => (text(a) < text(b) ? -1 : 1)

/** The id where it stands once, else with its number. */
function keysOf(lines: readonly FormulaLine[]): string[] {
  const seen = new Map<string, number>()
  return lines.map(({ subject }) => {
    const nth = (seen.get(subject.id) ?? 0) + 1
    seen.set(subject.id, nth)
    return nth === 1 ? subject.id : `${subject.id}/${nth}`
  })
}

function statedPhase(context: FormulaContext, line: FormulaLine): Item['stated'] {
  const own = context.formula.lines.find(
    ({ ingredient, phase }) => ingredient === line.subject.id && phase === line.phase,
  )
  return own?.phase
}

/**
 * The lines of a formula in whole steps of the scale, in an order that does not depend on how the recipe is written.
 *
 * @param units   whole scale steps of the batch
 * @param step_g  one step of the scale [g]
 */
export function itemsOf(context: FormulaContext, units: number, step_g: number): Item[] {
  const lines = context.lines.filter(({ share_percent }) => share_percent > 0).sort(byText)
  const keys = keysOf(lines)
  const sum_percent = lines.reduce((sum, { share_percent }) => sum + share_percent, 0)
  const parts = apportion(
    units,
    lines.map(({ share_percent }) => share_percent),
  )
  return lines.map((line, at) => ({
    key: keys[at] ?? line.subject.id,
    line,
    units: parts[at] ?? 0,
    exact_g: (units * step_g * line.share_percent) / sum_percent,
    stated: statedPhase(context, line),
  }))
}
