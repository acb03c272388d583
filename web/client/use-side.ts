import type { Bench } from '#web/state/bench.ts'
import { EMPTY } from '#web/state/bench.ts'
import type { Formula, Lacking } from '#web/state/to-formula.ts'
import type { Question } from './question.ts'
import type { CheckReply } from './use-check.ts'
import { useRecipeAnswers } from './use-recipe-answers.ts'

export interface SideAnswer {
  formula: Formula | null
  /** what keeps it from being checked */
  lacking: Lacking | null
  check: Question<CheckReply>
}

/** One recipe of two: as a formula, with what the check says. Stand-ins are not asked for. */
export function useSide(bench: Bench | null): SideAnswer {
  const { formula, lacking, check } = useRecipeAnswers(bench ?? EMPTY)
  return { formula, lacking, check }
}
