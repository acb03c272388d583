import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { askHere } from '#answers/ask.ts'
import { ANSWERS } from '#answers/index.ts'
import { buildApp } from '#api/app.ts'
import { SUMMARIES } from '#api/plugins/openapi.ts'
import type { App } from '#api/routes/shared.ts'
import { ask } from '../api/ask.ts'
import { REQUESTS } from '../api/error-requests.ts'
import { smallWorld } from '../api/small-world.ts'

const breathe = () => Promise.resolve()
const here = { world: smallWorld(), breathe }

let app: App
beforeAll(async () => {
  app = await buildApp({ world: smallWorld(), rateLimit: false })
})
afterAll(() => app.close())

/** What only a server meets: text that is no JSON, paths that no page makes, methods, sizes. */
const OF_THE_WIRE = new Set(['bad-json', 'method-not-allowed', 'too-large'])
const madeByPages = REQUESTS.filter(
  ([code, , , url, body]) => !OF_THE_WIRE.has(code) && !/%E0%A4%A|text=a&text=b|a{5000}/.test(url) && body !== '{',
)

describe('without a server every refusal reads as the server words it', () => {
  test('nearly all requests of the error tests are tried', () => {
    expect(madeByPages.length).toBeGreaterThan(REQUESTS.length - 14)
  })
  test.each(madeByPages)('%s (%i): %s %s', async (_code, status, method, url, body) => {
    const asked = typeof body === 'string' ? (JSON.parse(body) as unknown) : body
    const given = await askHere(here, { method, url, body: asked })
    expect(given.status).toBe(status)
    expect(given.body).toEqual((await ask(app, method, url, body)).body)
  })
})

/** Files to be saved, and the data that the page has already. */
const OF_THE_SERVER = ['GET /api/claims.csv', 'GET /api/graph-data/:version', 'GET /api/graph/download']

test('every question of the API can be asked without a server, files to be saved left out', () => {
  const asked = ANSWERS.map(({ route }) => `${route.method} ${route.url}`).filter((route) => !/calculate\//.test(route))
  expect([...asked, ...OF_THE_SERVER].sort()).toEqual(Object.keys(SUMMARIES).sort())
})
