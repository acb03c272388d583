import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type IngredientsReply = Api['GET /api/ingredients']['reply']
export type ShortRecord = IngredientsReply['ingredients'][number]
export interface Filter {
  text: string
  role: string
  class: string
  after: string
}

const PAGE = '40'

/** A page of the records that fit a filter. */
export function useIngredients({ text, role, class: kind, after }: Filter): Question<IngredientsReply> {
  return useQuestion({
    key: ['ingredients', text, role, kind, after],
    ask: (signal) => call('GET /api/ingredients', { query: { text, role, class: kind, after, limit: PAGE }, signal }),
    keep: true,
  })
}
