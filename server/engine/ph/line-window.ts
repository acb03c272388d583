import type { FormulaContext } from '#engine/formula/context.ts'
import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Claim } from '#engine/model/claim.ts'
import type { Range } from '#engine/units/range.ts'

/** keeps: it does not split, fall out or lose its body; works: it does its job. */
export type WindowKind = 'keeps' | 'works'

const PROPERTY: Record<WindowKind, string> = { keeps: 'ph_stability', works: 'ph_effective' }

/** One pH window of one line, with the claim that states it. */
export interface LineWindow {
  ingredient: string
  inci: string
  kind: WindowKind
  window: Range
  claim: Claim
}

/** The windows of all lines, each ingredient once, by id; keeps before works. */
export function lineWindows(
  { lines }: FormulaContext,
  kinds: readonly WindowKind[] = ['keeps', 'works'],
): LineWindow[] {
  const subjects = new Map(lines.map(({ subject }) => [subject.id, subject]))
  return [...subjects.values()].flatMap((subject) =>
    kinds.flatMap((kind) => {
      const window = rangeOfProperty(subject, PROPERTY[kind])
      const claim = usedClaim(subject, PROPERTY[kind])
      return window && claim ? [{ ingredient: subject.id, inci: subject.inci, kind, window, claim }] : []
    }),
  )
}
