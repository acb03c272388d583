import fc from 'fast-check'
import { Value } from 'typebox/value'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { PreservationReply } from '#contract/preservation.ts'
import { preservationOf } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { makeFormula, realWorld } from '../helpers.ts'
import { ask } from './ask.ts'
import { formula as smallFormula, smallWorld } from './small-world.ts'

const URL = '/api/preservation'
const world = realWorld()
let app: App
beforeAll(async () => {
  app = await buildApp({ world, rateLimit: false })
}, 120_000)
afterAll(() => app.close())
const post = (formula: unknown) => ask(app, 'POST', URL, { formula })

describe('POST /api/preservation', () => {
  test('tells levels, window, who takes the rest, cover, hurdles and a verdict', async () => {
    const formula = makeFormula({ 'glycine-soja-oil': 20, 'polysorbate-80': 2, methylparaben: 0.2 }, { ph: 6 })
    const { status, body } = await post(formula)
    expect(status).toBe(200)
    expect(body).toMatchObject({
      agents: [
        {
          ingredient: 'methylparaben',
          total_percent: 0.2,
          free_percent: { min: expect.any(Number), max: expect.any(Number) },
          window: 'inside',
          takenBy: [
            { by: 'micelles', ingredient: 'polysorbate-80', share_percent: expect.any(Number) },
            { by: 'oil', ingredient: 'glycine-soja-oil', share_percent: expect.any(Number) },
          ],
        },
      ],
      covers: {
        gramPositive: expect.any(String),
        gramNegative: 'open',
        yeast: expect.any(String),
        mould: expect.any(String),
      },
      hurdles: [{ kind: 'package', text: expect.any(String) }],
      verdict: expect.stringMatching(/^(weak|fails)$/),
      graphVersion: world.knowledge.version,
    })
  })

  test.each(FORMULAS)('the reply on $name loses nothing on the wire', async ({ formula }) => {
    const { status, body } = await post(formula)
    const report = { ...preservationOf(world, formula), graphVersion: world.knowledge.version }
    expect([status, body]).toEqual([200, JSON.parse(JSON.stringify(report))])
    expect(Value.Check(PreservationReply, report)).toBe(true)
  })

  test('every claim and source that a finding names can be looked up', async () => {
    for (const { formula } of FORMULAS) {
      for (const { because, sources } of preservationOf(world, formula).findings) {
        const claims = because.flatMap(({ claim }) => (claim === undefined ? [] : [claim]))
        expect(claims.filter((id) => !CLAIMS.has(id))).toEqual([])
        expect(sources.flatMap((id) => id.split(/\s*;\s*/)).filter((id) => !known(id))).toEqual([])
      }
    }
  })

  test('an unknown ingredient is 404 with its place', async () => {
    const { status, body } = await post(makeFormula({ 'no-such-thing': 1 }))
    expect([status, (body['error'] as Record<string, unknown>)['code']]).toEqual([404, 'unknown-ingredient'])
  })

  test.each([
    ['an unknown key', { ...makeFormula({}), colour: 1 }, 400, 'bad-request'],
    [
      'shares that do not add up',
      { ...makeFormula({}), lines: [{ ingredient: 'aqua', share_percent: 80 }] },
      422,
      'shares-not-100',
    ],
    ['no formula', undefined, 400, 'bad-request'],
  ])('%s is refused', async (_name, formula, wanted, code) => {
    const { status, body } = await post(formula)
    expect([status, (body['error'] as Record<string, unknown>)['code']]).toEqual([wanted, code])
  })

  test('a graph without the tables still answers', async () => {
    const small = await buildApp({ world: smallWorld(), rateLimit: false })
    const { status, body } = await ask(small, 'POST', URL, { formula: smallFormula() })
    await small.close()
    expect([status, body['verdict']]).toEqual([200, expect.any(String)])
  })
})

const CLAIMS = new Set(world.subjects.flatMap(({ facts }) => [...facts.values()].flat().map(({ id }) => id)))
const known = (id: string): boolean =>
  ['practice', 'memory', 'derived', 'DERIVED'].includes(id) || world.knowledge.sources.has(id)

describe('any formula at all', () => {
  const ids = world.subjects.map(({ id }) => id)
  const agents = world.players('preservative').map(({ id }) => id)
  const line = fc.record({
    ingredient: fc.oneof(fc.constantFrom(...ids), fc.constantFrom(...agents)),
    weight: fc.double({ min: 0.001, max: 50, noNaN: true }),
  })
  const formulas = fc
    .record({
      lines: fc.array(line, { minLength: 1, maxLength: 12 }),
      ph: fc.option(fc.double({ min: -1, max: 15, noNaN: true })),
      product: fc.constantFrom('leave-on' as const, 'rinse-off' as const),
    })
    .map(({ lines, ph, product }): Formula => {
      const all = lines.reduce((sum, { weight }) => sum + weight, 0)
      return {
        market: 'eu',
        product,
        ph,
        hottest_c: null,
        lines: lines.map(({ ingredient, weight }) => ({ ingredient, share_percent: (weight * 100) / all })),
      }
    })

  test('has an answer that fits the schema, the same in any order', () =>
    fc.assert(
      fc.property(formulas, (formula) => {
        const report = preservationOf(world, formula)
        expect(Value.Check(PreservationReply, { ...report, graphVersion: 'x' })).toBe(true)
        expect(JSON.stringify(report)).not.toMatch(/null%|NaN|Infinity|undefined/)
        const turned = { ...formula, lines: [...formula.lines].reverse() }
        expect(preservationOf(world, turned)).toEqual(report)
      }),
      { numRuns: 300 },
    ))
})
