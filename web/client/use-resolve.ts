import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type Resolved = Api['POST /api/resolve']['reply']['results'][number]
export type ResolvedNames = ReadonlyMap<string, Resolved>

const AT_ONCE = 200 // names that one request may carry

async function resolve(names: string[], signal: AbortSignal): Promise<ResolvedNames> {
  const pages = Array.from({ length: Math.ceil(names.length / AT_ONCE) }, (_, page) =>
    names.slice(page * AT_ONCE, (page + 1) * AT_ONCE),
  )
  const replies = await Promise.all(pages.map((page) => call('POST /api/resolve', { body: { names: page }, signal })))
  const results = replies.flatMap((reply) => reply.results)
  return new Map(names.flatMap((name, at) => (results[at] ? [[name, results[at]] as const] : [])))
}

/** What each name means; asked once for all names together. */
export function useResolve(names: readonly string[]): Question<ResolvedNames> {
  const once = [...new Set(names.filter((name) => name.trim() !== '').map((name) => name.slice(0, 200)))].sort()
  return useQuestion({
    key: ['resolve', once],
    ask: (signal) => resolve(once, signal),
    when: once.length > 0,
    keep: true,
  })
}
