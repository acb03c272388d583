import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'

export type WorkedReply = Api['POST /api/calculate/:name']['reply']

const WHILE_TYPING_MS = 350

/** One calculation, worked out when the figures have stood still for a moment. */
export function useCalculate(name: string, body: Record<string, unknown> | null): Question<WorkedReply> {
  const now = body === null ? '' : JSON.stringify(body)
  const asked = useDebounced(now, WHILE_TYPING_MS)
  const question = useQuestion({
    key: ['calculate', name, asked],
    ask: (signal) =>
      call('POST /api/calculate/:name', {
        params: { name },
        body: JSON.parse(asked) as Record<string, unknown>,
        signal,
      }),
    when: body !== null && asked !== '',
    keep: true,
  })
  return question.state === 'ready' && now !== asked ? { ...question, old: true } : question
}
