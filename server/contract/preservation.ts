import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Formula } from '#engine/model/formula.ts'
import { PreservationReport } from '#engine/model/preservation.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const PreservationBody = closed({ formula: Formula })
export const PreservationReply = closed({ ...PreservationReport.properties, graphVersion: Type.String() })
export type PreservationReply = Static<typeof PreservationReply>

export const preservationRoute = {
  method: 'POST',
  url: '/api/preservation',
  schema: { body: PreservationBody, response: { 200: PreservationReply, '4xx': ErrorReply } },
} as const
