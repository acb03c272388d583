import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'

export type SwapsBody = Api['POST /api/swaps']['body']
export type SwapsReply = Api['POST /api/swaps']['reply']
export type Swap = SwapsReply['swaps'][number]
export type Refusal = SwapsReply['refused'][number]
export type LeaveOut = SwapsReply['leaveOut']

const WHILE_CHOOSING_MS = 400

/** What can stand in for the missing lines of this recipe? */
export function useSwaps(body: SwapsBody | null): Question<SwapsReply> {
  const now = body === null ? '' : JSON.stringify(body)
  const asked = useDebounced(now, WHILE_CHOOSING_MS)
  const question = useQuestion({
    key: ['swaps', asked],
    ask: (signal) => call('POST /api/swaps', { body: JSON.parse(asked) as SwapsBody, signal }),
    when: body !== null && asked !== '',
    keep: true,
  })
  // While the question waits to be asked, the answer shown is already to another recipe.
  return question.state === 'ready' && now !== asked ? { ...question, old: true } : question
}
