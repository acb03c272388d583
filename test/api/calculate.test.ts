import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { calculateRoute, CALCULATION_NAMES } from '#contract/calculate.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { EXAMPLES } from '#web/calculations/examples.ts'
import { fieldsOf } from '#web/calculations/form-fields.ts'
import { namesIn, readForm } from '#web/calculations/form-values.ts'
import { realWorld } from '../helpers.ts'
import { ask } from './ask.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: realWorld(), rateLimit: false })
})
afterAll(() => app.close())

const LYE = { fats_g: 500, superfat_percent: 6, lye: 'naoh', purity_percent: 98 }

test.each([
  ['iodine-value', { ingredient: 'olea-europaea-fruit-oi' }, '/ingredient'],
  ['profile-distance', { from: 'cocos-nucifera-oil', to: 'olea-europaea-fruit-oi' }, '/to'],
  ['profile-distance', { from: 'olea-europaea-fruit-oi', to: 'cocos-nucifera-oil' }, '/from'],
  [
    'lye-for-soap',
    {
      ...LYE,
      fats: [
        { ingredient: 'cocos-nucifera-oil', share_percent: 30 },
        { ingredient: 'olea-europaea-fruit-oi', share_percent: 70 },
      ],
    },
    '/fats/1/ingredient',
  ],
])('%s: an id that no record has is not found, and the nearest are named', async (name, input, at) => {
  const { status, body } = await ask(app, 'POST', `/api/calculate/${name}`, input)
  expect(status).toBe(404)
  expect(body['error']).toMatchObject({ code: 'unknown-ingredient', at })
  expect((body['error'] as { nearest: string[] }).nearest[0]).toBe('olea-europaea-fruit-oil')
})

test('what the relation cannot bear stays out of range', async () => {
  const { status, body } = await ask(app, 'POST', '/api/calculate/iodine-value', {})
  expect(status).toBe(422)
  expect(body['error']).toMatchObject({ code: 'out-of-range', at: '/ingredient' })
})

test('every source of a calculation comes with its title', async () => {
  const fats = [{ ingredient: 'olea-europaea-fruit-oil', share_percent: 100 }]
  const { body } = await ask(app, 'POST', '/api/calculate/lye-for-soap', { ...LYE, fats })
  const cited = body['cited'] as { id: string; title: string }[]
  expect(cited.map(({ id }) => id)).toEqual(body['sources'])
  const { source } = usedClaim(realWorld().find('olea-europaea-fruit-oil')!, 'saponification_value')!
  const title = realWorld().knowledge.sources.get(source)!.title
  expect(title.length).toBeGreaterThan(10)
  expect(cited).toContainEqual(expect.objectContaining({ id: source, title }))
})

describe('the examples of the page', () => {
  test.each(CALCULATION_NAMES)('%s: works as it stands in the form', async (name) => {
    const fields = fieldsOf(calculateRoute(name).schema.body)
    const values = EXAMPLES[name] ?? {}
    const found = await ask(app, 'POST', '/api/resolve', { names: ['-', ...namesIn(fields, values)] })
    const results = found.body['results'] as { typed: string; ingredient: string | null }[]
    const { body, faults } = readForm(
      fields,
      values,
      (typed) => results.find((one) => one.typed === typed)?.ingredient ?? 'nothing',
    )
    expect([...faults]).toEqual([])
    const reply = await ask(app, 'POST', `/api/calculate/${name}`, body)
    expect(reply.body['error']).toBeUndefined()
    expect(reply.status).toBe(200)
  })
})
