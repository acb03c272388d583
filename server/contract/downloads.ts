import { Type } from 'typebox'
import { Id } from '#engine/model/formula.ts'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'
import { GraphQuery } from './graph.ts'

const { around, steps, relations } = GraphQuery.properties

/** A file: its type says which program reads it. */
const file = (types: readonly string[], description: string) => ({
  description,
  content: Object.fromEntries(types.map((type) => [type, { schema: Type.String() }])),
})

export const JSON_FILE = 'application/json; charset=utf-8'
export const GEXF_FILE = 'application/gexf+xml; charset=utf-8'
export const GRAPHML_FILE = 'application/graphml+xml; charset=utf-8'
export const CSV_FILE = 'text/csv; charset=utf-8; header=present'

export const downloadRoute = {
  method: 'GET',
  url: '/api/graph/download',
  schema: {
    querystring: closed({
      format: oneOf('json', 'gexf', 'graphml'),
      around: Type.Optional(around),
      steps,
      relations,
    }),
    response: {
      200: file(
        [JSON_FILE, GEXF_FILE, GRAPHML_FILE],
        'The whole graph, or all around one node, as a file with its terms',
      ),
      '4xx': ErrorReply,
    },
  },
} as const

export const claimsRoute = {
  method: 'GET',
  url: '/api/claims.csv',
  schema: {
    querystring: closed({ ingredient: Type.Optional(Id) }),
    response: {
      200: file([CSV_FILE], 'A row a statement, with origin, licence and attribution; no cell runs as a formula'),
      '4xx': ErrorReply,
    },
  },
} as const
