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

const CLOSED = { additionalProperties: false } as const

/** A node; a window that is not known has no key. */
const NODE = {
  id: Type.String(),
  kind: oneOf('ingredient', 'role', 'class', 'limit'),
  label: Type.String(),
  windows: Type.Optional(
    closed({
      ph_stability: Type.Optional(Type.Object(Window.properties, { ...CLOSED, description: 'pH in which it keeps' })),
      ph_effective: Type.Optional(Type.Object(Window.properties, { ...CLOSED, description: 'pH in which it works' })),
      heat_max_c: Type.Optional(Type.Number({ description: 'Bears heat up to this' })),
    }),
  ),
  links: Type.Number({ description: 'Stated edges at the node, of all relations; holds-with is not counted' }),
}

export const GraphReply = closed({
  nodes: Type.Array(closed(NODE)),
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

const Place = Type.Integer({ minimum: 0 })

export const WholeGraphReply = closed({
  relations: Type.Array(Type.String()),
  nodes: Type.Array(closed({ ...NODE, x: Type.Number(), y: Type.Number() }), {
    description: 'Roles first, then what has most edges; x and y in units of the drawing, y upwards',
  }),
  edges: Type.Array(Type.Array(Place, { minItems: 3, maxItems: 3 }), {
    description: 'From and to as places in nodes, relation as place in relations; each once, without holds-with',
  }),
  graphVersion: Type.String(),
})
export type WholeGraphReply = Static<typeof WholeGraphReply>

export const wholeGraphRoute = {
  method: 'GET',
  url: '/api/graph/whole',
  schema: { response: { 200: WholeGraphReply, '4xx': ErrorReply } },
} as const
