import staticFiles from '@fastify/static'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { notFound } from './errors.ts'
import type { MethodsOf } from './methods.ts'

/** Names of built assets change with their content; everything else is asked for again each time. */
const cacheFor = (path: string): string =>
  /[\\/]assets[\\/]/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache'

/** The address of a screen: no part of the API, no file, and the caller takes a page. */
function isScreen({ url, headers }: FastifyRequest): boolean {
  const path = url.replace(/[?#].*$/, '')
  const isFile = /\.[^/]*$/.test(path)
  return !/^\/api(\/|$)/.test(path) && !isFile && /text\/html|\*\/\*/.test(headers.accept ?? '*/*')
}

/**
 * The worker that keeps the page: built with the page, told here of which version the data are. A change of either makes
 * another worker, and that one takes in page and data together or not at all.
 */
function serveWorker(app: FastifyInstance, dataVersion: string | undefined): void {
  const data = dataVersion === undefined ? null : `/api/graph-data/${encodeURIComponent(dataVersion)}`
  const script = `self.graphData = ${JSON.stringify(data)}\nimportScripts('/service-worker.js')\n`
  app.get('/sw.js', { schema: { hide: true } }, async (_request, reply) =>
    reply.type('text/javascript; charset=utf-8').header('cache-control', 'no-cache').send(script),
  )
}

/** Serves the built page; the page itself decides what to show at an address. */
export async function servePages(
  app: FastifyInstance,
  { webRoot, dataVersion, methodsOf }: { webRoot?: string; dataVersion?: string; methodsOf: MethodsOf },
): Promise<void> {
  if (webRoot !== undefined) {
    serveWorker(app, dataVersion)
    await app.register(staticFiles, {
      root: webRoot,
      wildcard: false,
      cacheControl: false,
      schemaHide: true,
      setHeaders: (reply, path) => void reply.header('cache-control', cacheFor(path)),
    })
  }
  app.setNotFoundHandler((request, reply) => {
    if (webRoot !== undefined && isScreen(request)) return reply.code(200).sendFile('index.html')
    throw notFound(request, reply, methodsOf)
  })
}
