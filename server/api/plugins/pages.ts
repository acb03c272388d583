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

/** Serves the built page; the page itself decides what to show at an address. */
export async function servePages(
  app: FastifyInstance,
  webRoot: string | undefined,
  methodsOf: MethodsOf,
): Promise<void> {
  if (webRoot !== undefined) {
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
