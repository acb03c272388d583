import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Provenance } from '#engine/model/claim.ts'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'

export const GraphQuery = closed({
  around: Type.String({ maxLength: 400, description: 'An ingredient id, role:x or class:x' }),
  steps: Type.Optional(oneOf('1', '2', '3')),
  relations: Type.Optional(
    Type.String({ maxLength: 400, description: 'Relations to follow, parted by commas; all when left out' }),
  ),
})

const Window = closed({ min: Type.Optional(Type.Number()), max: Type.Optional(Type.Number()) })

export const GraphReply = closed({
  nodes: Type.Array(
    closed({ id: Type.String(), kind: oneOf('ingredient', 'role', 'class', 'limit'), label: Type.String() }),
  ),
  edges: Type.Array(
    closed({
      id: Type.String(),
      from: Type.String(),
      to: Type.String(),
      relation: Type.String(),
      says: Type.Optional(Type.String()),
      severity: Type.Optional(Type.String()),
      ph: Type.Optional(Type.Union([Window, Type.Null()])),
      heat_c: Type.Optional(Type.Union([Window, Type.Null()])),
      ...Type.Partial(Provenance).properties,
    }),
  ),
  cut: Type.Boolean({ description: 'More nodes lie around than are shown' }),
  graphVersion: Type.String(),
})
export type GraphReply = Static<typeof GraphReply>

export const graphRoute = {
  method: 'GET',
  url: '/api/graph',
  schema: { querystring: GraphQuery, response: { 200: GraphReply, '4xx': ErrorReply } },
} as const
