import { Value } from 'typebox/value'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { LabelReply } from '#contract/label.ts'
import { ask } from './ask.ts'
import { formula, smallWorld } from './small-world.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: smallWorld(), rateLimit: false })
})
afterAll(() => app.close())
const post = (body: unknown) => ask(app, 'POST', '/api/label', body)

describe('POST /api/label', () => {
  test('answers whole', async () => {
    const { status, body } = await post({ formula: formula() })
    expect(status).toBe(200)
    expect([...Value.Errors(LabelReply, body)]).toEqual([])
    expect(body).toEqual({
      list: ['Aqua', 'Glycerin', 'Sodium Benzoate'],
      text: 'Ingredients: Aqua, Glycerin, Sodium Benzoate',
      positions: [
        {
          name: 'Aqua',
          ingredient: 'aqua',
          percent: { min: 96.5, max: 96.5 },
          group: 'ordered',
          why: '96.5 %, by mass, as 1 % or more',
          from: ['aqua'],
        },
        {
          name: 'Glycerin',
          ingredient: 'glycerin',
          percent: { min: 3, max: 3 },
          group: 'ordered',
          why: '3 %, by mass, as 1 % or more',
          from: ['glycerin'],
        },
        {
          name: 'Sodium Benzoate',
          ingredient: 'sodium-benzoate',
          percent: { min: 0.5, max: 0.5 },
          group: 'free',
          why: '0.5 %, below 1 %: any order behind the others, here by mass',
          from: ['sodium-benzoate'],
        },
      ],
      allergens: [],
      warnings: [],
      questions: [],
      rules: [],
      findings: [expect.objectContaining({ rule: 'limit-by-law', severity: 'unknown', about: ['sodium-benzoate'] })],
      notCovered: [],
      graphVersion: 'small-1',
    })
  })
  test('an alias is the same label', async () => {
    const lines = formula().lines.map((line) => (line.ingredient === 'aqua' ? { ...line, ingredient: 'water' } : line))
    expect((await post({ formula: formula({ lines }) })).body).toEqual((await post({ formula: formula() })).body)
  })
  test.each([
    [{ formula: formula(), batch_g: 100 }, 400, 'bad-request'],
    [{ formula: formula(), placedOn: '2026-02-30' }, 400, 'bad-request'],
    [{ formula: formula(), placedOn: 'tomorrow' }, 400, 'bad-request'],
    [{ formula: formula({ lines: [{ ingredient: 'blorp', share_percent: 100 }] }) }, 404, 'unknown-ingredient'],
    [{ formula: formula({ lines: [{ ingredient: 'aqua', share_percent: 99 }] }) }, 422, 'shares-not-100'],
    [{}, 400, 'bad-request'],
  ])('%j is refused', async (body, status, code) => {
    const reply = await post(body)
    expect(reply.status).toBe(status)
    expect(reply.body).toMatchObject({ error: { code } })
  })
})
