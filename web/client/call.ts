import type { Api, ApiError } from '#contract/api.ts'
import { askAnywhere, NoAnswer } from '#web/offline/ask.ts'
import type { Given } from '#web/offline/messages.ts'
import { language } from '#web/text/language.ts'

type Route = keyof Api
type Body<R extends Route> = Api[R] extends { body: infer B } ? B : undefined

export interface Asked<R extends Route> {
  params?: Record<string, string>
  query?: Record<string, string | undefined>
  body?: Body<R>
  signal?: AbortSignal
}

/** An answer that is an error: `code` is one of the API's, or `no-answer` when nothing came back. */
export class CallError extends Error {
  constructor(
    readonly code: string,
    message: string,
    readonly nearest: string[] = [],
  ) {
    super(message)
  }
}

function urlOf(path: string, params: Record<string, string>, query: Record<string, string | undefined>): string {
  const filled = path.replace(/:(\w+)/g, (_, name: string) => encodeURIComponent(params[name] ?? ''))
  const asked = new URLSearchParams(Object.entries(query).flatMap(([key, value]) => (value ? [[key, value]] : [])))
  return asked.size > 0 ? `${filled}?${asked}` : filled
}

/** Reply of a question that was answered, error of one that was refused. */
function replyOf<R extends Route>({ status, body }: Given): Api[R]['reply'] {
  if (status < 400) return body as Api[R]['reply']
  const { error } = body as ApiError
  throw new CallError(error.code, error.message, error.nearest)
}

/**
 * Asks the API one question; when the server is away, the same answer comes from the engine in this page.
 *
 * @throws CallError when it is refused or nobody can answer; an AbortError when `signal` fires
 */
export async function call<R extends Route>(route: R, asked: Asked<R> = {}): Promise<Api[R]['reply']> {
  const [method = 'GET', path = ''] = route.split(' ')
  const { params = {}, query = {}, body, signal } = asked
  const question = { method, language, url: urlOf(path, params, query), ...(body !== undefined && { body }) }
  const given = await askAnywhere(question, signal).catch((error: unknown) => {
    throw error instanceof NoAnswer ? new CallError('no-answer', error.message) : error
  })
  return replyOf<R>(given)
}
