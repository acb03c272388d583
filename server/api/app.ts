import fastify from 'fastify'
import type { FastifyServerOptions } from 'fastify'
import type { World } from '#engine/index.ts'
import { answerErrors, BODY_MAX_BYTES, sendError } from './plugins/errors.ts'
import { serveDocs } from './plugins/docs.ts'
import { addGuards } from './plugins/guards.ts'
import { acceptJsonOnly } from './plugins/json-body.ts'
import { watchMethods } from './plugins/methods.ts'
import { describeRoutes } from './plugins/openapi.ts'
import { servePages } from './plugins/pages.ts'
import { answerRoutes } from './routes/answers.ts'
import { downloadRoutes } from './routes/downloads.ts'
import { graphDataRoutes } from './routes/graph-data.ts'
import type { GraphData } from './routes/graph-data.ts'
import type { App } from './routes/shared.ts'

export interface AppOptions {
  world: World
  /** folder of the built page; without it only the API answers */
  webRoot?: string
  /** all data as one file, from which a page can answer when the server is away */
  graphData?: GraphData
  logger?: FastifyServerOptions['logger']
  /** version of the program, as the description of the API states it */
  version?: string
  /** off: any number of requests (tests) */
  rateLimit?: boolean
}

const LONGEST_ID = 1000
const REQUEST_TIMEOUT_MS = 30_000

const ROUTES = [answerRoutes, downloadRoutes]

function newApp(logger: AppOptions['logger']): App {
  return fastify({
    ...(logger !== undefined && { logger }),
    bodyLimit: BODY_MAX_BYTES,
    requestTimeout: REQUEST_TIMEOUT_MS,
    routerOptions: { maxParamLength: LONGEST_ID * 3 }, // percent-encoded; the schema judges the length
    frameworkErrors: (error, request, reply) => void sendError(error, request, reply),
    // The defaults turn null into 0 and drop unknown keys in silence.
    ajv: { customOptions: { coerceTypes: false, removeAdditional: false, useDefaults: false, allErrors: false } },
  }) as App
}

/** The server without a port: all routes over one world, ready for listen or inject. */
export async function buildApp(options: AppOptions): Promise<App> {
  const { world, webRoot, graphData, logger, version = '0', rateLimit = true } = options
  const app = newApp(logger)
  const methodsOf = watchMethods(app)
  acceptJsonOnly(app)
  answerErrors(app, methodsOf)
  await addGuards(app, rateLimit)
  await describeRoutes(app, version)
  for (const addRoutes of ROUTES) addRoutes(app, world)
  if (graphData) graphDataRoutes(app, graphData)
  serveDocs(app)
  await servePages(app, {
    methodsOf,
    ...(webRoot !== undefined && { webRoot }),
    ...(graphData && { dataVersion: graphData.version }),
  })
  await app.ready()
  return app
}
