import { Type } from 'typebox'
import type { Static } from 'typebox'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'
import { Tier } from './ingredients.ts'
import { WHOLE } from './query.ts'

export const NamesQuery = closed({
  text: Type.String({ maxLength: 200, description: 'What has been typed so far' }),
  limit: Type.Optional(Type.String({ pattern: WHOLE, description: '1 to 200, 12 when left out' })),
})

export const NameSuggestion = closed({
  ingredient: Type.String(),
  inci: Type.String(),
  tier: Tier,
  name: Type.Optional(Type.String({ description: 'The name that fitted, where it is not the INCI name' })),
  by: oneOf('name', 'beginning', 'words', 'part', 'likeness'),
  roles: Type.Array(Type.String(), { description: 'What it does, in words, two at most' }),
})
export type NameSuggestion = Static<typeof NameSuggestion>

export const NamesReply = closed({ names: Type.Array(NameSuggestion), graphVersion: Type.String() })
export type NamesReply = Static<typeof NamesReply>

export const namesRoute = {
  method: 'GET',
  url: '/api/names',
  schema: { querystring: NamesQuery, response: { 200: NamesReply, '4xx': ErrorReply } },
} as const
