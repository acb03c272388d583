import { useMemo } from 'react'
import type { Bench } from '#web/state/bench.ts'
import { useBenchAnswers } from './use-bench-answers.ts'
import type { BenchAnswers } from './use-bench-answers.ts'

/** What the server has to say about a recipe as a whole: what is marked missing matters to the search on the bench only. */
export function useRecipeAnswers(bench: Bench): BenchAnswers {
  const whole = useMemo(() => ({ ...bench, lines: bench.lines.map((line) => ({ ...line, missing: false })) }), [bench])
  return useBenchAnswers(whole)
}
