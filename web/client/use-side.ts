import { useMemo } from 'react'
import type { Bench } from '#web/state/bench.ts'
import { EMPTY } from '#web/state/bench.ts'
import { toFormula } from '#web/state/to-formula.ts'
import type { Formula, Lacking } from '#web/state/to-formula.ts'
import type { Question } from './question.ts'
import type { CheckReply } from './use-check.ts'
import { useBenchAnswers } from './use-bench-answers.ts'

export interface SideAnswer {
  formula: Formula | null
  /** what keeps it from being checked */
  lacking: Lacking | null
  check: Question<CheckReply>
}

/** One recipe of two: as a formula, with what the check says. Stand-ins are not asked for. */
export function useSide(bench: Bench | null): SideAnswer {
  const calm = useMemo(
    () => (bench === null ? EMPTY : { ...bench, lines: bench.lines.map((line) => ({ ...line, missing: false })) }),
    [bench],
  )
  const { idOf, lacking, check } = useBenchAnswers(calm)
  const asked = toFormula(calm, idOf)
  return { formula: 'formula' in asked ? asked.formula : null, lacking, check }
}
