import { Type } from 'typebox'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const graphDataRoute = {
  method: 'GET',
  url: '/api/graph-data/:version',
  schema: {
    params: closed({ version: Type.String({ maxLength: 100, description: 'graphVersion of any answer' }) }),
    response: {
      200: {
        description:
          'The reviewed files as the engine reads them, in one; /api/graph/download is the one for other uses',
        content: { 'application/json': { schema: Type.Unknown() } },
      },
      '4xx': ErrorReply,
    },
  },
} as const
