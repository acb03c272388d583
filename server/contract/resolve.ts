import { Type } from 'typebox'
import type { Static } from 'typebox'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'

export const ResolveBody = closed({
  names: Type.Array(Type.String({ maxLength: 200 }), { minItems: 1, maxItems: 200 }),
})

export const ResolveResult = closed({
  typed: Type.String(),
  status: oneOf('found', 'ask', 'unknown'),
  ingredient: Type.Union([Type.String(), Type.Null()]),
  inci: Type.Union([Type.String(), Type.Null()]),
  tier: Type.Union([oneOf('full', 'short', 'inventory'), Type.Null()]),
  note: Type.Optional(Type.String()),
  choices: Type.Array(
    closed({ ingredient: Type.String(), inci: Type.String(), score: Type.Number(), why: Type.String() }),
  ),
})
export type ResolveResult = Static<typeof ResolveResult>
export const ResolveReply = closed({ results: Type.Array(ResolveResult), graphVersion: Type.String() })

export const resolveRoute = {
  method: 'POST',
  url: '/api/resolve',
  schema: { body: ResolveBody, response: { 200: ResolveReply, '4xx': ErrorReply } },
} as const
