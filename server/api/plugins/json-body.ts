import type { FastifyInstance } from 'fastify'
import { ApiError } from '#answers/api-error.ts'

const BYTE_ORDER_MARK = /^\ufeff/

function parseJson(text: string): unknown {
  if (text.trim() === '') throw new ApiError(400, 'bad-json', 'body: is empty, expected JSON', { at: '' })
  try {
    return JSON.parse(text.replace(BYTE_ORDER_MARK, ''))
  } catch (error) {
    const says = error instanceof Error ? error.message.slice(0, 200) : 'cannot be read'
    throw new ApiError(400, 'bad-json', `body: is not JSON: ${says}`, { at: '' })
  }
}

/**
 * Takes JSON and nothing else. Keys such as __proto__ are read as plain keys, which the closed schemas then refuse by
 * name; they never become a prototype.
 */
export function acceptJsonOnly(app: FastifyInstance): void {
  app.removeAllContentTypeParsers()
  app.addContentTypeParser('application/json', { parseAs: 'string' }, async (_request: unknown, text: string) =>
    parseJson(text),
  )
}
