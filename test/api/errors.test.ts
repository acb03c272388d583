import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { ERROR_CODES } from '#contract/error.ts'
import { ask } from './ask.ts'
import { aqua, check, CHECK, lines, REQUESTS } from './error-requests.ts'
import { smallWorld } from './small-world.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: smallWorld(), rateLimit: false })
})
afterAll(() => app.close())

/** Codes that no request to the small world brings about; each has a test of its own below or in learn.test.ts. */
const APART = ['not-json', 'too-many', 'internal', 'not-a-choice']

describe('every code', () => {
  test('is listed, and every listed code is sent by some request', () => {
    expect([...new Set([...REQUESTS.map(([code]) => code), ...APART])].sort()).toEqual(Object.keys(ERROR_CODES).sort())
  })
  test.each(REQUESTS)('%s (%i): %s %s', async (code, status, method, url, body, says, at) => {
    const reply = await ask(app, method, url, body)
    expect(reply.status).toBe(status)
    expect(Object.keys(reply.body)).toEqual(['error'])
    const error = reply.body['error'] as { code: string; message: string; at?: string }
    expect(error.code).toBe(code)
    expect(error.message).toMatch(says)
    expect(error.message.length).toBeLessThan(1000)
    expect(error.at).toBe(at)
  })
})

test('the nearest names come as a list too', async () => {
  const { body } = await ask(app, 'GET', '/api/ingredients/sodium-benzoat')
  expect(body).toMatchObject({ error: { nearest: ['sodium-benzoate'] } })
})

test('a share inside the tolerance is taken, whatever the order of the lines', async () => {
  const shares = [0.1, 0.2, 0.3, 99.35]
  const of = (all: number[]) => lines(...all.map((share_percent) => aqua({ share_percent })))
  expect((await ask(app, 'POST', CHECK, of(shares))).status).toBe(200)
  expect((await ask(app, 'POST', CHECK, of(shares.reverse()))).status).toBe(200)
})

test('another content type is refused', async () => {
  const send = (type: string) =>
    app.inject({ method: 'POST', url: CHECK, payload: '{}', headers: { 'content-type': type } })
  for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'application/xml']) {
    const response = await send(type)
    expect(response.statusCode).toBe(415)
    expect(response.json()).toMatchObject({ error: { code: 'not-json' } })
  }
  expect((await send('application/json; charset=utf-8')).json()).toMatchObject({ error: { code: 'bad-request' } })
})

test('a refused method says which are taken', async () => {
  const response = await app.inject({ method: 'DELETE', url: '/api/ingredients/aqua' })
  expect(response.statusCode).toBe(405)
  expect(response.headers['allow']).toBe('GET, HEAD')
})

test('a body with a byte order mark is read', async () => {
  const response = await ask(app, 'POST', CHECK, `\ufeff${JSON.stringify(check({}))}`)
  expect(response.status).toBe(200)
})

test('a fault of the server is logged and gives no details away', async () => {
  const lines: string[] = []
  const world = {
    ...smallWorld(),
    find: () => {
      throw new Error('secret of the house')
    },
  }
  const stream = { write: (line: string) => void lines.push(line) }
  const broken = await buildApp({ world, logger: { level: 'error', stream } })
  const response = await broken.inject('/api/ingredients/aqua')
  expect(response.statusCode).toBe(500)
  expect(response.json()).toMatchObject({ error: { code: 'internal' } })
  expect(response.body).not.toContain('secret')
  expect(lines.join('')).toContain('secret of the house')
  await broken.close()
})

test('too many requests in a minute are refused', async () => {
  const limited = await buildApp({ world: smallWorld() })
  const statuses = []
  for (let n = 0; n <= 600; n++) statuses.push((await limited.inject('/api/health')).statusCode)
  expect(statuses.slice(0, 600).every((status) => status === 200)).toBe(true)
  const refused = await limited.inject('/api/health')
  expect(refused.statusCode).toBe(429)
  expect(refused.json()).toMatchObject({ error: { code: 'too-many' } })
  expect(refused.headers['retry-after']).toBeDefined()
  await limited.close()
})
