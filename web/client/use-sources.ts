import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type SourcesReply = Api['GET /api/sources']['reply']
export type SourceShort = SourcesReply['sources'][number]
export type SourceReply = Api['GET /api/sources/:id']['reply']
export type SourceUse = SourceReply['uses'][number]

export interface SourceFilter {
  text: string
  kind: string
  after: string
}

const PAGE = '50'

/** A page of the works that the statements rest on. */
export function useSources({ text, kind, after }: SourceFilter): Question<SourcesReply> {
  return useQuestion({
    key: ['sources', text, kind, after],
    ask: (signal) => call('GET /api/sources', { query: { text, kind, after, limit: PAGE }, signal }),
    keep: true,
  })
}

/** One work, with a page of what rests on it. */
export function useSource(id: string, after: string): Question<SourceReply> {
  return useQuestion({
    key: ['source', id, after],
    ask: (signal) => call('GET /api/sources/:id', { params: { id }, query: { after, limit: PAGE }, signal }),
    keep: true,
  })
}
