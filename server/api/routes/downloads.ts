import type { FastifyReply, FastifyRequest } from 'fastify'
import { CSV_FILE, claimsRoute, downloadRoute, GEXF_FILE, GRAPHML_FILE, JSON_FILE } from '#contract/downloads.ts'
import { exportClaims, exportGraph, writeGraph } from '#engine/index.ts'
import type { GraphFormat, World } from '#engine/index.ts'
import { relationsOf, STEPS, mustBeNode } from '#answers/graph.ts'
import { knownId } from '#answers/guards.ts'
import type { App } from './shared.ts'

const TYPES: Record<GraphFormat, string> = { json: JSON_FILE, gexf: GEXF_FILE, graphml: GRAPHML_FILE }

/** What goes well in a file name on every system. */
const plain = (text: string): string => text.replace(/[^a-z0-9]+/g, '-').slice(0, 80)

interface File {
  name: string
  type: string
  /** made when it is sent: who has the file already needs none */
  content: () => Buffer
}

/** Sends a file to be saved. The same question to the same graph has the same answer, so a caller may keep it. */
function sendFile(request: FastifyRequest, reply: FastifyReply, { name, type, content }: File): FastifyReply {
  const tag = `"${name}"`
  reply.header('etag', tag).header('cache-control', 'no-cache')
  if (request.headers['if-none-match'] === tag) return reply.code(304).send()
  return reply.type(type).header('content-disposition', `attachment; filename="${name}"`).send(content())
}

/** Makes a thing once and keeps it. */
function kept(make: (key: string) => string): (key: string) => Buffer {
  const known = new Map<string, Buffer>()
  return (key) => {
    const made = known.get(key) ?? Buffer.from(make(key))
    known.set(key, made)
    return made
  }
}

export function downloadRoutes(app: App, world: World): void {
  const { version } = world.knowledge
  const textOf = (format: GraphFormat, part?: Parameters<typeof exportGraph>[1]): string => {
    const graph = exportGraph(world, part)
    if (!graph) throw new Error(`${part?.around ?? 'the graph'} was found and then not`)
    return writeGraph(graph, format)
  }
  const whole = kept((format) => textOf(format as GraphFormat))
  const allClaims = kept(() => exportClaims(world))
  app.route({
    ...downloadRoute,
    compress: { encodings: ['gzip'] }, // brotli takes seconds over so much
    handler: async (request, reply) => {
      const { format, around, steps = '1', relations } = request.query
      if (around === undefined) {
        const name = `understudy-graph-${version}.${format}`
        return sendFile(request, reply, { name, type: TYPES[format], content: () => whole(format) })
      }
      mustBeNode(world, around)
      const part = { around, steps: STEPS[steps], ...relationsOf(relations) }
      const what = plain([around, steps, ...(part.relations ?? [])].join('-'))
      const name = `understudy-graph-${what}-${version}.${format}`
      return sendFile(request, reply, { name, type: TYPES[format], content: () => Buffer.from(textOf(format, part)) })
    },
  })
  app.route({
    ...claimsRoute,
    compress: { encodings: ['gzip'] },
    handler: async (request, reply) => {
      const { ingredient } = request.query
      if (ingredient === undefined) {
        const name = `understudy-claims-${version}.csv`
        return sendFile(request, reply, { name, type: CSV_FILE, content: () => allClaims('all') })
      }
      const id = knownId(world, ingredient, '/ingredient')
      const subject = world.find(id)
      if (!subject) throw new Error(`${id} was found and then not`)
      const name = `understudy-claims-${plain(id)}-${version}.csv`
      return sendFile(request, reply, {
        name,
        type: CSV_FILE,
        content: () => Buffer.from(exportClaims(world, subject)),
      })
    },
  })
}
