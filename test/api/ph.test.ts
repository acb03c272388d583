import { Value } from 'typebox/value'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { PhAdjustReply, PhWindowReply } from '#contract/ph.ts'
import { adjustPh, phWindow } from '#engine/index.ts'
import type { Formula } from '#engine/index.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { makeFormula, realWorld } from '../helpers.ts'
import { ask } from './ask.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: realWorld(), rateLimit: false })
}, 120_000)
afterAll(() => app.close())

const WASH = makeFormula(
  { 'decyl-glucoside': 12, 'sodium-benzoate': 0.5, glycerin: 3 },
  { ph: 4.5, product: 'rinse-off' },
)
const window = (formula: unknown) => ask(app, 'POST', '/api/ph/window', { formula })
const adjust = (changes: Record<string, unknown>) =>
  ask(app, 'POST', '/api/ph/adjust', { formula: WASH, batch_g: 500, target_ph: 4.2, ...changes })
const calculate = (name: string, body: unknown) => ask(app, 'POST', `/api/calculate/${name}`, body)

describe('POST /api/ph/window', () => {
  test('answers with all that the engine says, and the version of the graph', async () => {
    const { status, body } = await window(WASH)
    expect(status).toBe(200)
    expect(body).toEqual({ ...phWindow(realWorld(), WASH), graphVersion: realWorld().knowledge.version })
  })
  test.each(FORMULAS.map(({ name, formula }) => [name, formula] as const))('%s fits the schema', (_, formula) => {
    expect(Value.Errors(PhWindowReply, { ...phWindow(realWorld(), formula), graphVersion: 'x' })).toEqual([])
  })
  test('takes aliases, and refuses unknown lines and keys', async () => {
    expect((await window({ ...WASH, lines: [{ ingredient: 'water', share_percent: 100 }] })).status).toBe(200)
    expect((await window({ ...WASH, lines: [{ ingredient: 'zzz', share_percent: 100 }] })).body).toMatchObject({
      error: { code: 'unknown-ingredient', at: '/lines/0/ingredient' },
    })
    expect((await ask(app, 'POST', '/api/ph/window', { formula: WASH, target_ph: 5 })).body).toMatchObject({
      error: { code: 'bad-request', at: '/target_ph' },
    })
  })
})

describe('POST /api/ph/adjust', () => {
  const measured = [
    { added_g: 0, ph: 7 },
    { added_g: 0.4, ph: 6.1 },
  ]
  test('answers with all that the engine says, and the version of the graph', async () => {
    const asked = {
      with: 'citric-acid',
      strength_percent: 50,
      measured,
      diluted: 10,
      meter: 'strips' as const,
      temp_c: 22,
    }
    const { status, body } = await adjust(asked)
    expect(status).toBe(200)
    const said = adjustPh(realWorld(), { formula: WASH, batch_g: 500, target_ph: 4.2, ...asked })
    expect(body).toEqual({ ...said, graphVersion: realWorld().knowledge.version })
  })
  test.each(FORMULAS.map(({ name, formula }) => [name, formula] as const))(
    '%s fits the schema',
    (_, formula: Formula) => {
      for (const target_ph of [4.5, 7.5]) {
        const reply = adjustPh(realWorld(), { formula, batch_g: 250, target_ph, measured: [{ added_g: 0, ph: 6 }] })
        expect(Value.Errors(PhAdjustReply, { ...reply, graphVersion: 'x' })).toEqual([])
      }
    },
  )
  test('does not depend on the order of the lines', async () => {
    const turned = { ...WASH, lines: [...WASH.lines].reverse() }
    const { body } = await adjust({ with: 'citric-acid', measured })
    expect((await adjust({ formula: turned, with: 'citric-acid', measured })).body).toEqual(body)
  })
  test.each([
    [{ batch_g: 0 }, 400, 'bad-request', '/batch_g'],
    [{ batch_g: '500' }, 400, 'bad-request', '/batch_g'],
    [{ target_ph: 14.5 }, 400, 'bad-request', '/target_ph'],
    [{ strength_percent: 0 }, 400, 'bad-request', '/strength_percent'],
    [{ meter: 'tongue' }, 400, 'bad-request', '/meter'],
    [{ colour: 'red' }, 400, 'bad-request', '/colour'],
    [{ measured: [{ added_g: 0, ph: 7, note: 'x' }] }, 400, 'bad-request', '/measured/0/note'],
    [{ measured: [{ added_g: 0.1, ph: 7 }] }, 422, 'out-of-range', '/measured/0/added_g'],
    [{ with: 'zzz' }, 404, 'unknown-ingredient', '/with'],
    [{ with: 'glycerin' }, 422, 'out-of-range', '/with'],
    [{ with: 'sodium-hydroxide', measured: [{ added_g: 0, ph: 7 }] }, 422, 'out-of-range', '/with'],
  ])('%j is %i %s at %s', async (changes, status, code, at) => {
    const reply = await adjust(changes)
    expect(reply.status).toBe(status)
    expect(reply.body).toMatchObject({ error: { code, at } })
  })
})

describe('POST /api/calculate/…', () => {
  const mixture = {
    systems: [{ acid: 'citric acid', mol_per_l: 0.05 }],
    ions: [{ charge: 1, mol_per_l: 0.05 }],
    temp_c: 25,
  }
  test('each of the four answers with its values, steps, range and sources', async () => {
    const replies = await Promise.all([
      calculate('undissociated-share', { ph: 5, pka: 4.2 }),
      calculate('buffer-ph', mixture),
      calculate('acid-dose', { ...mixture, add: 'sodium hydroxide', target_ph: 5 }),
      calculate('dilution-ph', { ...mixture, product_g: 10, water_g: 90 }),
    ])
    expect(replies.map(({ status }) => status)).toEqual([200, 200, 200, 200])
    expect(replies.map(({ body }) => Object.keys(body['values'] as object))).toEqual([
      ['share'],
      ['ph', 'ionic_strength'],
      ['dose_mmol_per_l', 'dose_percent'],
      ['ph', 'ph_diluted'],
    ])
    for (const { body } of replies)
      expect(Object.keys(body).sort()).toEqual(['cited', 'graphVersion', 'range', 'sources', 'steps', 'values'])
  })
  test.each([
    [
      'buffer-ph',
      { ...mixture, systems: [{ acid: 'unicorn', mol_per_l: 0.1 }] },
      422,
      '/systems/0/acid',
      /unicorn; known.*citric acid/,
    ],
    ['acid-dose', { ...mixture, add: 'unicorn', target_ph: 5 }, 422, '/add', /unicorn/],
    ['acid-dose', { ...mixture, add: 'citric acid', target_ph: 9 }, 422, '/target_ph', /asks for a base/],
    ['buffer-ph', { ...mixture, temp_c: 120 }, 400, '/temp_c', /<= 100/],
    ['buffer-ph', { ...mixture, ions: [{ charge: 1.5, mol_per_l: 0.1 }] }, 400, '/ions/0/charge', /whole number/],
    ['buffer-ph', { systems: [], ions: [] }, 400, '/temp_c', /is required/],
    ['undissociated-share', { ph: 15, pka: 4 }, 400, '/ph', /<= 14/],
  ])('%s %j is %i at %s', async (name, body, status, at, says) => {
    const reply = await calculate(name, body)
    expect(reply.status).toBe(status)
    const { error } = reply.body as { error: { at: string; message: string } }
    expect(error.at).toBe(at)
    expect(error.message).toMatch(says)
  })
})
