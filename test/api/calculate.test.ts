import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
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
  expect(cited.find(({ id }) => id === 'codex-cxs33-mem')?.title).toContain('CODEX STAN 33-1981')
})
