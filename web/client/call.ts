import type { Api, ApiError } from '#contract/api.ts'

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

const isApiError = (value: unknown): value is ApiError =>
  typeof value === 'object' && value !== null && 'error' in value && typeof value.error === 'object'

async function failureOf(response: Response): Promise<CallError> {
  const reply: unknown = await response.json().catch(() => null)
  if (!isApiError(reply)) return new CallError('no-answer', `The server answered with ${response.status}`)
  return new CallError(reply.error.code, reply.error.message, reply.error.nearest)
}

/**
 * Asks the API one question.
 *
 * @throws CallError when the server refuses or cannot be reached; an AbortError when `signal` fires
 */
export async function call<R extends Route>(route: R, asked: Asked<R> = {}): Promise<Api[R]['reply']> {
  const [method = 'GET', path = ''] = route.split(' ')
  const { params = {}, query = {}, body, signal } = asked
  const json = body === undefined ? {} : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
  const response = await fetch(urlOf(path, params, query), { method, ...json, ...(signal && { signal }) }).catch(
    (error: unknown) => {
      if (signal?.aborted) throw error
      throw new CallError('no-answer', 'The server cannot be reached')
    },
  )
  if (!response.ok) throw await failureOf(response)
  return (await response.json()) as Api[R]['reply']
}
