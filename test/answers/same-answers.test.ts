import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Given, Question } from '#answers/ask.ts'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { packRaw } from '#load/pack-raw.ts'
import { tableOf } from '#load/read-table.ts'
import { realRaw, realWorld } from '../helpers.ts'
import { openPageEngine } from './page-engine.ts'
import { recipesOf } from './recipes.ts'
import type { Recipe } from './recipes.ts'

const LONG_MS = 300_000
const AT_ONCE = 200

let app: App
let askPage: (question: Question) => Promise<Given>
beforeAll(async () => {
  app = await buildApp({ world: realWorld(), graphData: packRaw(realRaw()), rateLimit: false })
  const data = await app.inject(`/api/graph-data/${realWorld().knowledge.version}`)
  askPage = await openPageEngine(data.body)
}, LONG_MS)
afterAll(() => app.close())

async function askServer({ method, url, body }: Question): Promise<Given> {
  const sent =
    body === undefined ? {} : { payload: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
  const response = await app.inject({ method: method as 'GET' | 'POST', url, ...sent })
  return { status: response.statusCode, body: response.json() as unknown }
}

/** @returns how many of the questions were answered, and not refused */
async function expectSame(questions: readonly Question[]): Promise<number> {
  let answered = 0
  for (const question of questions) {
    const server = await askServer(question)
    expect(await askPage(question), JSON.stringify(question)).toEqual(server)
    if (server.status === 200) answered += 1
  }
  return answered
}

const post = (url: string, body: unknown): Question => ({ method: 'POST', url, body })
const get = (url: string): Question => ({ method: 'GET', url })

const ROUTES: Record<string, (recipe: Recipe) => Question> = {
  check: ({ formula }) => post('/api/check', { formula, placedOn: '2026-11-27' }),
  label: ({ formula }) => post('/api/label', { formula }),
  batch: ({ formula }) => post('/api/batch', { formula, batch_g: 250, step_g: 0.01 }),
  'ph window': ({ formula }) => post('/api/ph/window', { formula }),
  preservation: ({ formula }) => post('/api/preservation', { formula }),
  swaps: ({ formula, missing }) => post('/api/swaps', { formula, missing: [missing], limit: 5 }),
}

const RECIPES = recipesOf(realWorld())

describe.each(Object.entries(RECIPES))('the page answers as the server does on %s', (_from, recipes) => {
  test.each(Object.entries(ROUTES))(
    '%s',
    async (_route, question) => {
      const answered = await expectSame(recipes.map(question))
      expect(answered).toBeGreaterThan(recipes.length / 2) // equal refusals alone would prove little
    },
    LONG_MS,
  )
})

test(
  'the page understands every name of the worked cases as the server does',
  async () => {
    const file = new URL('../reference/resolve-cases.csv', import.meta.url)
    const names = tableOf(file.pathname, readFileSync(file)).map((row) => row['typed'] ?? '')
    const pages = Array.from({ length: Math.ceil(names.length / AT_ONCE) }, (_, at) =>
      post('/api/resolve', { names: names.slice(at * AT_ONCE, (at + 1) * AT_ONCE) }),
    )
    expect(await expectSame(pages)).toBe(pages.length)
  },
  LONG_MS,
)

test(
  'the page finds and describes ingredients and roles as the server does',
  async () => {
    const ids = [
      ...new Set(
        Object.values(RECIPES)
          .flat()
          .map(({ missing }) => missing),
      ),
    ]
    const roles = [...realWorld().knowledge.roles.keys()]
    const questions = [
      get('/api/health'),
      get('/api/ingredients?text=cetearyl&limit=50'),
      get('/api/ingredients?role=preservative&ph=5.5&cold=yes'),
      get('/api/ingredients?class=nut&beside=urea,glycerin'),
      get('/api/names?text=glyc'),
      get('/api/graph?around=glycerin&steps=2&limit=50'),
      get('/api/calculate'),
      ...ids.map((id) => get(`/api/ingredients/${id}`)),
      ...ids.slice(0, 20).map((id) => get(`/api/ingredients/${id}/stand-ins`)),
      get('/api/roles'),
      ...roles.map((id) => get(`/api/roles/${id}`)),
      post('/api/learn/items', { seed: 7, count: 6 }),
      post('/api/calculate/undissociated-share', { ph: 4.2, pka: 4.2 }),
    ]
    expect(await expectSame(questions)).toBeGreaterThan(questions.length * 0.9)
  },
  LONG_MS,
)
