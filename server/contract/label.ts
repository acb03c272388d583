import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Formula } from '#engine/model/formula.ts'
import { Label } from '#engine/model/label.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const LabelBody = closed({
  formula: Formula,
  placedOn: Type.Optional(
    Type.String({ pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'Day on which the goods reach the market' }),
  ),
})

export const LabelReply = closed({ ...Label.properties, graphVersion: Type.String() })
export type LabelReply = Static<typeof LabelReply>

export const labelRoute = {
  method: 'POST',
  url: '/api/label',
  schema: { body: LabelBody, response: { 200: LabelReply, '4xx': ErrorReply } },
} as const
