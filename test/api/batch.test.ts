import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { ask } from './ask.ts'
import { realWorld } from '../helpers.ts'

const world = realWorld()
const graphVersion = world.knowledge.version

const formula = (changes: Record<string, unknown> = {}) => ({
  ...{ market: 'eu', product: 'leave-on', ph: 4.5, hottest_c: 25 },
  lines: [
    { ingredient: 'aqua', fills: true },
    { ingredient: 'glycerin', share_percent: 3 },
    { ingredient: 'sodium-benzoate', share_percent: 0.5 },
  ],
  ...changes,
})

let app: App
beforeAll(async () => {
  app = await buildApp({ world, rateLimit: false })
})
afterAll(() => app.close())

const post = (body: Record<string, unknown>) => ask(app, 'POST', '/api/batch', { formula: formula(), ...body })

describe('a batch sheet', () => {
  test('comes whole, with its formula checked and the version of the graph', async () => {
    const { status, body } = await post({ batch_g: 100 })
    expect(status).toBe(200)
    expect(Object.keys(body).sort()).toEqual(
      [
        ...['batch_g', 'overage_percent', 'weighed_g', 'step_g', 'form', 'formDerived', 'process', 'date', 'batchCode'],
        ...['lines', 'phases', 'steps', 'edges', 'order', 'looks', 'remarks', 'cost', 'verdict', 'findings'],
        'graphVersion',
      ].sort(),
    )
    expect(body).toMatchObject({
      ...{ batch_g: 100, overage_percent: 0, weighed_g: 100, step_g: 0.1, form: 'solution', formDerived: true },
      ...{ process: 'one-phase', date: null, batchCode: null, cost: null, graphVersion },
    })
    const check = await ask(app, 'POST', '/api/check', { formula: formula() })
    expect(body['findings']).toEqual(check.body['findings'])
    expect(body['verdict']).toEqual(check.body['verdict'])
  })

  test('says of a line what it weighs, where it goes and why', async () => {
    const { body } = await post({ batch_g: 100, prices_per_kg: { glycerin: 8 }, currency: 'EUR' })
    const lines = body['lines'] as { ingredient: string }[]
    expect(lines.find(({ ingredient }) => ingredient === 'sodium-benzoate')).toEqual({
      line: 'sodium-benzoate',
      ingredient: 'sodium-benzoate',
      inci: 'SODIUM BENZOATE',
      share_percent: 0.5,
      weigh_g: 0.5,
      phase: 'A',
      portions: [{ step: 'water-phase', weigh_g: 0.5 }],
      reasons: [
        { fact: 'dissolves in water', claim: usedClaim(world.find('sodium-benzoate')!, 'solubility')!.id },
        { fact: 'usual practice: a powder dissolves best before the batch is thick', from: 'practice' },
      ],
      cautions: world.find('sodium-benzoate')!.cautions,
    })
    expect(lines.find(({ ingredient }) => ingredient === 'glycerin')).toMatchObject({ weigh_g: 3, cost: 0.024 })
    expect(body['cost']).toEqual({
      ...{ currency: 'EUR', known: 0.024, total: null, per_100_g: null },
      ...{ missing: ['aqua', 'sodium-benzoate'], unused: [] },
    })
  })

  test('draws the order as steps and edges', async () => {
    const { body } = await post({ batch_g: 100, date: '2026-03-12', batchCode: 'T-1' })
    expect(body['order']).toEqual(['clean', 'weigh', 'water-phase', 'ph', 'fill', 'mark', 'sample', 'watch', 'discard'])
    expect(body['edges']).toContainEqual({ from: 'weigh', relation: 'before', to: 'water-phase' })
    const [first] = body['steps'] as Record<string, unknown>[]
    expect(first).toMatchObject({ id: 'clean', adds: [], uses: [], sources: ['practice'] })
    expect((body['looks'] as { date: string }[]).map(({ date }) => date)).toEqual([
      ...['2026-03-13', '2026-03-19', '2026-04-11'],
    ])
  })

  test('is the same whatever the order of the lines', async () => {
    const { lines } = formula()
    const back = await ask(app, 'POST', '/api/batch', {
      formula: formula({ lines: [...lines].reverse() }),
      batch_g: 77,
    })
    expect(back.body).toEqual((await post({ batch_g: 77 })).body)
  })

  test('takes an alias for its record', async () => {
    const [, ...others] = formula().lines
    const lines = [{ ingredient: 'water', fills: true }, ...others]
    const { body } = await ask(app, 'POST', '/api/batch', { formula: formula({ lines }), batch_g: 100 })
    expect(body).toEqual((await post({ batch_g: 100 })).body)
  })
})

describe('what is refused', () => {
  test.each([
    [{}, 400, 'bad-request', /^batch_g: is required/, '/batch_g'],
    [{ batch_g: 0 }, 400, 'bad-request', /^batch_g: must be > 0/, '/batch_g'],
    [{ batch_g: 1_000_001 }, 400, 'bad-request', /^batch_g: must be <= 1000000/, '/batch_g'],
    [{ batch_g: '100' }, 400, 'bad-request', /^batch_g: must be a finite number/, '/batch_g'],
    [{ batch_g: 100, step_g: 0 }, 400, 'bad-request', /^step_g: must be >= 0.001/, '/step_g'],
    [
      { batch_g: 100, overage_percent: 101 },
      400,
      'bad-request',
      /^overage_percent: must be <= 100/,
      '/overage_percent',
    ],
    [{ batch_g: 100, prices_per_kg: { Aqua: 1 } }, 400, 'bad-request', /^prices_per_kg/, '/prices_per_kg/Aqua'],
    [{ batch_g: 100, prices_per_kg: { aqua: -1 } }, 400, 'bad-request', /must be >= 0/, '/prices_per_kg/aqua'],
    [{ batch_g: 100, date: 'today' }, 400, 'bad-request', /^date: must be .*YYYY-MM-DD/, '/date'],
    [{ batch_g: 100, date: '2026-02-30' }, 400, 'bad-request', /^date: there is no day 2026-02-30/, '/date'],
    [{ batch_g: 100, colour: 1 }, 400, 'bad-request', /^colour: unknown key/, '/colour'],
    [{ batch_g: 0.01 }, 422, 'out-of-range', /^batch_g: expected at least one step of the scale/, '/batch_g'],
  ])('%j', async (asked, status, code, says, at) => {
    const reply = await post(asked)
    expect(reply.status).toBe(status)
    expect(reply.body).toMatchObject({ error: { code, at } })
    expect((reply.body['error'] as { message: string }).message).toMatch(says)
  })

  test('a formula that cannot be is refused as everywhere', async () => {
    const { status, body } = await ask(app, 'POST', '/api/batch', {
      formula: formula({ lines: [{ ingredient: 'aqua', share_percent: 90 }] }),
      batch_g: 100,
    })
    expect(status).toBe(422)
    expect(body).toMatchObject({ error: { code: 'shares-not-100' } })
  })
})
