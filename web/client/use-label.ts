import type { Api } from '#contract/api.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'

export type LabelReply = Api['POST /api/label']['reply']
export type LabelPosition = LabelReply['positions'][number]
export type LabelAllergen = LabelReply['allergens'][number]
export type LabelQuestion = LabelReply['questions'][number]

const WHILE_TYPING_MS = 350
const DAY = /^\d{4}-\d{2}-\d{2}$/

/** What goes on the label of this recipe, for goods placed on a day; a day half typed is not asked. */
export function useLabel(formula: Formula | null, placedOn: string): Question<LabelReply> {
  const day = DAY.test(placedOn) ? { placedOn } : {}
  const now = formula === null ? '' : JSON.stringify({ formula, ...day })
  const asked = useDebounced(now, WHILE_TYPING_MS)
  const question = useQuestion({
    key: ['label', asked],
    ask: (signal) => call('POST /api/label', { body: JSON.parse(asked) as Api['POST /api/label']['body'], signal }),
    when: formula !== null && asked !== '',
    keep: true,
  })
  // While the question waits to be asked, the answer shown is already to another recipe.
  return question.state === 'ready' && now !== asked ? { ...question, old: true } : question
}
