import type { Api } from '#contract/api.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'

export type CheckReply = Api['POST /api/check']['reply']
export type Finding = CheckReply['findings'][number]

const WHILE_TYPING_MS = 350

/** Does this recipe hold together? Asked when the recipe has stood still for a moment. */
export function useCheck(formula: Formula | null): Question<CheckReply> {
  const now = formula === null ? '' : JSON.stringify(formula)
  const asked = useDebounced(now, WHILE_TYPING_MS)
  const question = useQuestion({
    key: ['check', asked],
    ask: (signal) => call('POST /api/check', { body: { formula: JSON.parse(asked) as Formula }, signal }),
    when: formula !== null && asked !== '',
    keep: true,
  })
  // While the question waits to be asked, the answer shown is already to another recipe.
  return question.state === 'ready' && now !== asked ? { ...question, old: true } : question
}
