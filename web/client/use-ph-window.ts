import type { Api } from '#contract/api.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type PhWindowReply = Api['POST /api/ph/window']['reply']
export type WindowEnd = PhWindowReply['low']

/** Which pH suits every line, and who sets the ends? */
export function usePhWindow(formula: Formula | null): Question<PhWindowReply> {
  return useQuestion({
    key: ['ph-window', formula],
    ask: (signal) => call('POST /api/ph/window', { ...(formula && { body: { formula } }), signal }),
    when: formula !== null,
    keep: true,
  })
}
