import { useQueries } from '@tanstack/react-query'
import type { Api } from '#contract/api.ts'
import { call } from '#web/client/call.ts'
import { useQuestion } from '#web/client/question.ts'
import type { Question } from '#web/client/question.ts'
import type { LearnAnswer, LearnItem, LearnReply } from '#web/client/use-learn.ts'
import type { Quiz } from '#web/state/teach.ts'

const bodyOf = ({ seed, count, kinds, roles }: Quiz): Api['POST /api/learn/items']['body'] => ({
  seed,
  count,
  ...(kinds.length > 0 && { kinds }),
  ...(roles.length > 0 && { roles }),
})

/** The questions of a sheet; the same sheet, the same questions. */
export function useQuizItems(quiz: Quiz | null): Question<LearnReply> {
  const body = quiz && bodyOf(quiz)
  return useQuestion({
    key: ['quiz', body],
    ask: (signal) => call('POST /api/learn/items', { body: body as NonNullable<typeof body>, signal }),
    when: body !== null,
  })
}

export interface QuizKey {
  /** answer of each question; null: not there (yet) */
  answers: (LearnAnswer | null)[]
  failed: boolean[]
  done: number
  retry: () => void
}

const questionOf = ({ ref, id, choices }: LearnItem) => ({ item: ref, id, choice: choices[0]?.id ?? '' })

/** The key: the server gives it with the judgement of any choice. */
export function useQuizKey(items: readonly LearnItem[]): QuizKey {
  const replies = useQueries({
    queries: items.map((item) => ({
      queryKey: ['quiz-key', questionOf(item)],
      queryFn: ({ signal }: { signal: AbortSignal }) =>
        call('POST /api/learn/answers', { body: questionOf(item), signal }),
      staleTime: Infinity,
    })),
  })
  return {
    answers: replies.map(({ data }) => data ?? null),
    failed: replies.map(({ isError }) => isError),
    done: replies.filter(({ isSuccess }) => isSuccess).length,
    retry: () => replies.filter(({ isError }) => isError).forEach((reply) => void reply.refetch()),
  }
}
