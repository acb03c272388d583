import { gunzipSync } from 'node:zlib'
import { MultiDirectedGraph } from 'graphology'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { smallWorld } from './small-world.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: smallWorld(), rateLimit: false })
})
afterAll(() => app.close())
const get = (url: string, headers: Record<string, string> = {}) => app.inject({ url, headers })

describe('the graph as a file', () => {
  test.each([
    ['json', 'application/json; charset=utf-8', /^\{"options"/],
    ['gexf', 'application/gexf+xml; charset=utf-8', /^<\?xml[^>]*>\s*<gexf/],
    ['graphml', 'application/graphml+xml; charset=utf-8', /^<\?xml[^>]*>\s*<graphml/],
  ])('%s comes with its type and a name', async (format, type, start) => {
    const { statusCode, headers, body } = await get(`/api/graph/download?format=${format}`)
    expect(statusCode).toBe(200)
    expect(headers['content-type']).toBe(type)
    expect(headers['content-disposition']).toBe(`attachment; filename="understudy-graph-small-1.${format}"`)
    expect(body).toMatch(start)
  })
  test('whole, holds every node; around one, what lies around it', async () => {
    const read = async (query: string) => {
      const graph = new MultiDirectedGraph()
      graph.import((await get(`/api/graph/download?format=json${query}`)).json())
      return graph
    }
    expect((await read('')).order).toBe(smallWorld().graph.order)
    expect((await read('&around=glycerin&relations=stands-in-for')).nodes()).toEqual(['glycerin', 'sorbitol'])
    expect((await read('&around=glycerin&steps=3')).order).toBe(7)
  })
  test('around a node with signs has a plain file name', async () => {
    const { headers } = await get('/api/graph/download?format=gexf&around=role:acid')
    expect(headers['content-disposition']).toBe('attachment; filename="understudy-graph-role-acid-1-small-1.gexf"')
  })
  test('is not sent again to who has it', async () => {
    const url = '/api/graph/download?format=graphml'
    const { headers } = await get(url)
    const again = await get(url, { 'if-none-match': String(headers['etag']) })
    expect(again.statusCode).toBe(304)
    expect(again.body).toBe('')
  })
  test('is packed for who takes it packed', async () => {
    const url = '/api/graph/download?format=json'
    const packed = await get(url, { 'accept-encoding': 'br, gzip' })
    expect(packed.headers['content-encoding']).toBe('gzip')
    expect(gunzipSync(packed.rawPayload).toString()).toBe((await get(url)).body)
  })
})

describe('claims as a file', () => {
  test('hold every statement, or those of one ingredient under any of its names', async () => {
    const { headers, body } = await get('/api/claims.csv')
    expect(headers['content-type']).toBe('text/csv; charset=utf-8; header=present')
    expect(headers['content-disposition']).toBe('attachment; filename="understudy-claims-small-1.csv"')
    expect(body.split('\r\n')).toHaveLength(1 + 10 + 1)
    const one = await get('/api/claims.csv?ingredient=water')
    expect(one.headers['content-disposition']).toBe('attachment; filename="understudy-claims-aqua-small-1.csv"')
    expect(
      one.body
        .split('\r\n')
        .slice(1, -1)
        .every((row) => row.startsWith('aqua,AQUA,')),
    ).toBe(true)
  })
})

test.each([
  ['/api/graph/download', 400, /^format: is required/],
  ['/api/graph/download?format=xls', 400, /^format: must be one of json, gexf, graphml/],
  ['/api/graph/download?format=json&around=zzz', 404, /^around: /],
  ['/api/graph/download?format=json&around=aqua&relations=likes', 400, /^relations: likes is none of/],
  ['/api/claims.csv?ingredient=zzz', 404, /^ingredient: /],
])('%s is refused by name', async (url, status, message) => {
  const reply = await get(url)
  expect(reply.statusCode).toBe(status)
  expect(reply.json<{ error: { message: string } }>().error.message).toMatch(message)
})
