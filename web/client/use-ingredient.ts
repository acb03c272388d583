import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type IngredientReply = Api['GET /api/ingredients/:id']['reply']

/** One record, whole. */
export function useIngredient(id: string): Question<IngredientReply> {
  return useQuestion({
    key: ['ingredient', id],
    ask: (signal) => call('GET /api/ingredients/:id', { params: { id }, signal }),
  })
}
