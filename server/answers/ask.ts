import type { Language } from '#engine/index.ts'
import type { Answer, Here } from './answer.ts'
import { ApiError } from './api-error.ts'
import { ANSWERS } from './index.ts'
import { worldFor } from './languages.ts'
import { faultOf } from './validate.ts'

/** A question as it would go over the wire. */
export interface Question {
  method: string
  /** path with query, percent-encoded */
  url: string
  body?: unknown
  /** in which the answer is wanted; English where it says none */
  language?: Language
}

export interface Given {
  status: number
  body: unknown
}

interface Found {
  answer: Answer
  params: Record<string, string>
}

/** Values of the path's names, null when the path is another. */
function paramsOf(pattern: string, path: string): Record<string, string> | null {
  const names = pattern.split('/')
  const words = path.split('/')
  if (names.length !== words.length) return null
  const params: Record<string, string> = {}
  for (const [index, name] of names.entries()) {
    const word = words[index] ?? ''
    if (name.startsWith(':')) params[name.slice(1)] = decodeURIComponent(word)
    else if (name !== word) return null
  }
  return params
}

/** Plain paths go before paths with names in them, as the server's router has it. */
function find(method: string, path: string): Found | null {
  const found = ANSWERS.flatMap((answer) => {
    const params = answer.route.method === method ? paramsOf(answer.route.url, path) : null
    return params ? [{ answer, params }] : []
  })
  return found.find(({ answer }) => answer.route.url === path) ?? found[0] ?? null
}

/** @throws ApiError in the server's order: path, body, query */
function mustFit({ answer, params }: Found, query: unknown, body: unknown): void {
  const { schema } = answer.route
  const fault =
    (schema.params && faultOf(schema.params, params, 'params')) ??
    (schema.body && faultOf(schema.body, body, 'body')) ??
    (schema.querystring && faultOf(schema.querystring, query, 'querystring'))
  if (fault) throw fault
}

const failureOf = (error: unknown): ApiError =>
  error instanceof ApiError ? error : new ApiError(500, 'internal', 'The page failed; this is a fault of the page')

/** Answers a question without a server: same schemas, same functions, same errors. */
export async function askHere(here: Here, { method, url, body, language = 'en' }: Question): Promise<Given> {
  const [path = '', search = ''] = url.split('?')
  try {
    const found = find(method, path)
    if (!found) throw new ApiError(404, 'not-found', `There is nothing at ${path.slice(0, 100)}`)
    const query = Object.fromEntries(new URLSearchParams(search))
    mustFit(found, query, body)
    const speaking = { ...here, world: worldFor(here.world, found.answer.route, language) }
    return { status: 200, body: await found.answer.reply(speaking, { params: found.params, query, body }) }
  } catch (error) {
    const failure = failureOf(error)
    return { status: failure.statusCode, body: failure.body() }
  }
}
