import type { FastifyInstance } from 'fastify'
import { DOCS_STYLE, docsPage } from './docs-page.ts'
import type { OpenApi } from './docs-page.ts'

/** The description of all routes, for programs and for people, both from the schemas that the routes check with. */
export function serveDocs(app: FastifyInstance): void {
  const hidden = { schema: { hide: true } }
  let page: string | undefined
  app.get('/api/openapi.json', hidden, async () => app.swagger())
  app.get('/api/docs.css', hidden, async (_request, reply) => reply.type('text/css; charset=utf-8').send(DOCS_STYLE))
  app.get('/api/docs', hidden, async (_request, reply) => {
    page ??= docsPage(app.swagger() as OpenApi)
    return reply.type('text/html; charset=utf-8').send(page)
  })
}
