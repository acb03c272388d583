import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Provenance } from '#engine/model/claim.ts'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'
import { WHOLE } from './query.ts'

export const GraphQuery = closed({
  around: Type.String({ maxLength: 400, description: 'An ingredient id, role:x or class:x' }),
  steps: Type.Optional(oneOf('1', '2', '3')),
  relations: Type.Optional(
    Type.String({
      maxLength: 400,
      description:
        'Relations to follow, parted by commas; all but holds-with when left out. holds-with joins nearly all to all: it is followed from the middle only',
    }),
  ),
  limit: Type.Optional(Type.String({ pattern: WHOLE, description: 'Nodes of a page, 1 to 200, 150 when left out' })),
  after: Type.Optional(Type.String({ maxLength: 1000, description: 'Last node of the page before' })),
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
      level_percent: Type.Optional(closed({ ...Window.properties, typical: Type.Optional(Type.Number()) })),
      ratio: Type.Optional(Type.Number({ description: 'Of a stand-in: parts for one part' })),
      grade: Type.Optional(Type.String()),
      ph: Type.Optional(Type.Union([Window, Type.Null()])),
      heat_c: Type.Optional(Type.Union([Window, Type.Null()])),
      claims: Type.Optional(
        Type.Array(Type.String(), { description: 'Ids of the claims that a derived edge follows from' }),
      ),
      ...Type.Partial(Provenance).properties,
    }),
  ),
  cut: Type.Boolean({ description: 'More nodes lie around than are shown' }),
  next: Type.Union([Type.String(), Type.Null()], {
    description:
      'Node to go on after; the edges of a page begin or end at its nodes, the other end may be on a page before',
  }),
  total: Type.Number({ description: 'Nodes of all pages' }),
  graphVersion: Type.String(),
})
export type GraphReply = Static<typeof GraphReply>

export const graphRoute = {
  method: 'GET',
  url: '/api/graph',
  schema: { querystring: GraphQuery, response: { 200: GraphReply, '4xx': ErrorReply } },
} as const
