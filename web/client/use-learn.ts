import { useMutation } from '@tanstack/react-query'
import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

type ItemsBody = Api['POST /api/learn/items']['body']
export type LearnReply = Api['POST /api/learn/items']['reply']
export type LearnItem = LearnReply['items'][number]
export type LearnKind = LearnItem['kind']
export type LearnAnswer = Api['POST /api/learn/answers']['reply']

const IN_A_SET = 6

interface Wanted {
  kind: LearnKind | 'all'
  /** none: about all roles */
  roles: readonly string[]
  seed: number
  when: boolean
}

/** A set of new questions; another seed, another set. */
export function useLearnItems({ kind, roles, seed, when }: Wanted): Question<LearnReply> {
  const body: ItemsBody = {
    seed,
    count: IN_A_SET,
    ...(kind !== 'all' && { kinds: [kind] }),
    ...(roles.length > 0 && { roles: [...roles] }),
  }
  return useQuestion({
    key: ['learn', body],
    ask: (signal) => call('POST /api/learn/items', { body, signal }),
    when,
  })
}

/** Has the server judge a choice. */
export function useLearnAnswer() {
  return useMutation({
    mutationFn: ({ item, choice }: { item: LearnItem; choice: string }) =>
      call('POST /api/learn/answers', { body: { item: item.ref, id: item.id, choice } }),
  })
}
