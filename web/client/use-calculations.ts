import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type CalculationsReply = Api['GET /api/calculate']['reply']
export type CalculationShort = CalculationsReply['calculations'][number]

/** All calculations with the schema of their input. */
export function useCalculations(): Question<CalculationsReply> {
  return useQuestion({ key: ['calculations'], ask: (signal) => call('GET /api/calculate', { signal }) })
}
