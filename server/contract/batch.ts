import { Type } from 'typebox'
import type { Static } from 'typebox'
import { BatchAsk, BatchSheet } from '#engine/model/batch.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const BatchReply = closed({ ...BatchSheet.properties, graphVersion: Type.String() })
export type BatchReply = Static<typeof BatchReply>

export const batchRoute = {
  method: 'POST',
  url: '/api/batch',
  schema: { body: BatchAsk, response: { 200: BatchReply, '4xx': ErrorReply } },
} as const

export { BatchAsk }
