import { ApiError } from '#answers/api-error.ts'
import { graphDataRoute } from '#contract/graph-data.ts'
import type { App } from './shared.ts'

/** All data as one file, packed by whoever read them. */
export interface GraphData {
  version: string
  as: (packing: 'br' | 'gzip' | 'plain') => Promise<Uint8Array>
}

const packingFor = (accepted: string): 'br' | 'gzip' | 'plain' =>
  /\bbr\b/.test(accepted) ? 'br' : /\bgzip\b/.test(accepted) ? 'gzip' : 'plain'

/** The data from which a page answers when the server is away. A version never changes, so a caller may keep it. */
export function graphDataRoutes(app: App, data: GraphData): void {
  app.route({
    ...graphDataRoute,
    handler: async ({ params, headers }, reply) => {
      if (params.version !== data.version) {
        const says = `version: the data are of version ${data.version}, not ${params.version}`
        throw new ApiError(404, 'not-found', says, { at: '/version' })
      }
      const packing = packingFor(String(headers['accept-encoding'] ?? ''))
      if (packing !== 'plain') reply.header('content-encoding', packing)
      reply.header('vary', 'accept-encoding').header('cache-control', 'public, max-age=31536000, immutable')
      const file: unknown = Buffer.from(await data.as(packing))
      return reply.type('application/json; charset=utf-8').send(file)
    },
  })
}
