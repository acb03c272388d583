import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { brotliDecompressSync, gunzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import { CALCULATIONS } from '#engine/index.ts'
import { SUMMARIES } from '#api/plugins/openapi.ts'
import { schemaText } from '#api/plugins/schema-text.ts'
import type { App } from '#api/routes/shared.ts'
import { packRaw } from '#load/pack-raw.ts'
import { rawData, smallWorld } from './small-world.ts'

let app: App
let webRoot: string
beforeAll(async () => {
  webRoot = mkdtempSync(join(tmpdir(), 'understudy-web-'))
  mkdirSync(join(webRoot, 'assets'))
  writeFileSync(join(webRoot, 'index.html'), '<!doctype html><title>page</title>')
  writeFileSync(join(webRoot, 'assets/main-1.js'), `export {} // ${'x'.repeat(3000)}`)
  const graphData = packRaw(rawData())
  app = await buildApp({ world: smallWorld(), webRoot, graphData, version: '1.2.3', rateLimit: false })
})
afterAll(async () => {
  await app.close()
  rmSync(webRoot, { recursive: true })
})
const get = (url: string, headers: Record<string, string> = { accept: 'text/html' }) => app.inject({ url, headers })

test.each(['/', '/ingredients', '/ingredient/glycerin', '/roles', '/role/water?x=1', '/apiary'])(
  'the page answers at %s',
  async (url) => {
    const response = await get(url)
    expect(response.statusCode).toBe(200)
    expect(response.headers['content-type']).toBe('text/html; charset=utf-8')
    expect(response.headers['cache-control']).toBe('no-cache')
    expect(response.body).toContain('<title>page</title>')
  },
)

test.each(['/api', '/api/zzz', '/assets/gone.js', '/..%2f..%2fpackage.json'])('%s is no screen', async (url) => {
  const response = await get(url)
  expect(response.statusCode).toBe(404)
  expect(response.json()).toMatchObject({ error: { code: 'not-found' } })
})

test('a caller that takes no page gets an error, and only GET and HEAD get a screen', async () => {
  expect((await get('/roles', { accept: 'application/json' })).statusCode).toBe(404)
  expect((await app.inject({ method: 'HEAD', url: '/roles' })).statusCode).toBe(200)
  expect((await app.inject({ method: 'POST', url: '/roles' })).statusCode).toBe(404)
})

test('assets are kept for good and sent packed', async () => {
  const response = await get('/assets/main-1.js', { 'accept-encoding': 'gzip' })
  expect(response.headers['cache-control']).toBe('public, max-age=31536000, immutable')
  expect(response.headers['content-encoding']).toBe('gzip')
})

test('the content policy allows this server and nothing inline', async () => {
  for (const url of ['/', '/api/docs', '/api/health', '/api/zzz']) {
    const policy = String((await get(url)).headers['content-security-policy'])
    expect(policy).toContain("default-src 'self'")
    expect(policy).not.toMatch(/unsafe|data:|https?:|\*/)
  }
})

test('the worker that keeps the page is told the version of the data, and asked for anew each time', async () => {
  const response = await get('/sw.js')
  expect(response.headers['content-type']).toBe('text/javascript; charset=utf-8')
  expect(response.headers['cache-control']).toBe('no-cache')
  expect(response.body).toBe('self.graphData = "/api/graph-data/small-1"\nimportScripts(\'/service-worker.js\')\n')
})

test.each([
  ['br', brotliDecompressSync],
  ['gzip', gunzipSync],
  ['', (bytes: Buffer) => bytes],
] as const)('the data come as one file for good, packed as asked: "%s"', async (packing, unpack) => {
  const response = await get('/api/graph-data/small-1', { 'accept-encoding': packing })
  expect(response.statusCode).toBe(200)
  expect(response.headers['content-encoding'] ?? '').toBe(packing)
  expect(response.headers['cache-control']).toBe('public, max-age=31536000, immutable')
  expect(JSON.parse(unpack(response.rawPayload).toString('utf8'))).toEqual(JSON.parse(JSON.stringify(rawData())))
})

test('data of another version are not to be had', async () => {
  const response = await get('/api/graph-data/small-0')
  expect(response.statusCode).toBe(404)
  expect(response.json()).toMatchObject({ error: { code: 'not-found', at: '/version' } })
})

test('the description lists every route that is not hidden, each with a summary', async () => {
  const description = (await get('/api/openapi.json')).json<{
    openapi: string
    info: { version: string }
    paths: Record<string, Record<string, { summary?: string }>>
  }>()
  expect(description).toMatchObject({ openapi: '3.1.0', info: { title: 'Understudy', version: '1.2.3' } })
  const routes = Object.entries(description.paths).flatMap(([url, methods]) =>
    Object.entries(methods).map(([method, { summary }]) => [
      `${method.toUpperCase()} ${url.replace(/\{(\w+)\}/g, ':$1')}`,
      summary,
    ]),
  )
  const calculations = Object.entries(CALCULATIONS).map(([name, { title }]) => [`POST /api/calculate/${name}`, title])
  expect(Object.fromEntries(routes)).toEqual({ ...SUMMARIES, ...Object.fromEntries(calculations) })
})

test('the page of the description has every route, and neither script nor inline style', async () => {
  const response = await get('/api/docs')
  expect(response.headers['content-type']).toBe('text/html; charset=utf-8')
  expect(response.body).not.toMatch(/<script|<style|style=|onclick/)
  for (const route of Object.keys(SUMMARIES)) {
    expect(response.body).toContain(`<code>${route.replace(/:(\w+)/g, '{$1}')}</code>`)
  }
  expect((await get('/api/docs.css')).headers['content-type']).toBe('text/css; charset=utf-8')
})

test('a schema is written the way people write it down', () => {
  const schema = {
    type: 'object',
    required: ['ph'],
    properties: {
      ph: { anyOf: [{ type: 'number', minimum: -1, maximum: 15 }, { type: 'null' }] },
      names: { type: 'array', items: { type: 'string' }, maxItems: 3 },
      market: { enum: ['eu', 'us'], description: 'where it is sold' },
      scores: { type: 'object', additionalProperties: { type: 'number' } },
      fills: { const: true },
    },
  }
  expect(schemaText(schema)).toBe(
    [
      '{',
      '  ph: number (from -1, to 15) | null',
      '  names?: [ string ] (at most 3)',
      '  market?: "eu" | "us"   // where it is sold',
      '  scores?: { [name]: number }',
      '  fills?: true',
      '}',
    ].join('\n'),
  )
})
