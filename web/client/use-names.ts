import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'
import { useDebounced } from './use-debounced.ts'

export type NameSuggestion = Api['GET /api/names']['reply']['names'][number]

const WHILE_TYPING_MS = 130
const MOST = '12'

/** Names that fit what has been typed so far. The answer to an earlier text is dropped, whenever it comes. */
export function useNames(typed: string, isOpen: boolean): Question<readonly NameSuggestion[]> {
  const text = typed.trim().slice(0, 200)
  const asked = useDebounced(text, WHILE_TYPING_MS)
  const question = useQuestion({
    key: ['names', asked],
    ask: (signal) => call('GET /api/names', { query: { text: asked, limit: MOST }, signal }),
    when: isOpen && asked !== '',
    keep: true,
  })
  if (text === '') return { state: 'idle' }
  if (question.state !== 'ready') return question
  return { ...question, data: question.data.names, old: question.old || asked !== text }
}
