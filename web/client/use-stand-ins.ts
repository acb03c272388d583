import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import type { SwapsReply } from './use-swaps.ts'

export interface StandInsAsked {
  id: string
  role: string
  product: 'leave-on' | 'rinse-off' | ''
  market: 'eu' | 'us' | ''
}

/** What can stand in for an ingredient in general, with no recipe at hand? */
export function useStandIns({ id, role, product, market }: StandInsAsked): Question<SwapsReply> {
  return useQuestion({
    key: ['stand-ins', id, role, product, market],
    ask: (signal) =>
      call('GET /api/ingredients/:id/stand-ins', { params: { id }, query: { role, product, market }, signal }),
    keep: true,
  })
}
