import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { Value } from 'typebox/value'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { CORE_SCHEMA, load } from 'js-yaml'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { GraphReply } from '#contract/graph.ts'
import { IngredientReply } from '#contract/ingredients.ts'
import { RoleReply } from '#contract/roles.ts'
import {
  buildKnowledge,
  buildWorld,
  describeIngredient,
  describeRole,
  findIngredients,
  graphAround,
  RELATIONS,
} from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'

const DATA = fileURLToPath(new URL('../../graph-data', import.meta.url))

let world: World
let app: App
beforeAll(async () => {
  world = buildWorld(buildKnowledge(loadRaw(DATA)))
  app = await buildApp({ world, rateLimit: false })
}, 120_000)
afterAll(() => app.close())

const graphVersion = 'x'

/** A key outside a closed reply schema would vanish in silence, a missing one would make the reply fail. */
describe('replies fit their schemas', () => {
  test('every recorded ingredient', () => {
    const misfits = world.subjects.filter(
      ({ id }) => !Value.Check(IngredientReply, { ...describeIngredient(world, id), graphVersion }),
    )
    expect(misfits.map(({ id }) => id)).toEqual([])
  })
  test('every role', () => {
    const ids = [...world.knowledge.roles.keys()]
    const misfits = ids.filter((id) => !Value.Check(RoleReply, { ...describeRole(world, id), graphVersion }))
    expect(misfits).toEqual([])
  })
  test('the surroundings of every twentieth node', () => {
    const nodes = world.graph.nodes().filter((_, n) => n % 20 === 0)
    const misfits = nodes.filter(
      (around) => !Value.Check(GraphReply, { ...graphAround(world, { around }), graphVersion }),
    )
    expect(misfits).toEqual([])
  })
})

test('the relations that can be asked for are those of the data', () => {
  const file = load(readFileSync(`${DATA}/relations.yaml`, 'utf8'), { schema: CORE_SCHEMA }) as {
    relations: Record<string, unknown>
  }
  expect([...RELATIONS].sort()).toEqual(Object.keys(file.relations).sort())
  const used = new Set(world.graph.mapEdges((_, { relation }) => relation))
  expect([...used].filter((relation) => !RELATIONS.some((known) => known === relation))).toEqual([])
})

test('a drawing is cut where it would be too large to read, and says so', () => {
  const part = graphAround(world, { around: 'glycerin', steps: 3 })
  expect(part?.nodes).toHaveLength(150)
  expect(part?.cut).toBe(true)
  const ids = new Set(part?.nodes.map(({ id }) => id))
  expect(part?.edges.every(({ from, to }) => ids.has(from) && ids.has(to))).toBe(true)
})

test('the pages of a search join to the whole', () => {
  const query = { text: 'oil', limit: 200 }
  const ids: string[] = []
  let page = findIngredients(world, query)
  for (;;) {
    ids.push(...page.ingredients.map(({ id }) => id))
    if (page.next === null) break
    page = findIngredients(world, { ...query, after: page.next })
  }
  expect(new Set(ids).size).toBe(page.total)
  expect(ids).toHaveLength(page.total)
})

describe('no input makes the server fail', () => {
  const POSTS = ['/api/resolve', '/api/check', '/api/swaps', '/api/swap-sheet']
  const status = async (url: string, payload: string) => {
    const headers = { 'content-type': 'application/json' }
    return (await app.inject({ method: 'POST', url, payload, headers })).statusCode
  }

  test('not any JSON', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...POSTS), fc.json(), async (url, payload) => {
        expect(await status(url, payload)).toBeLessThan(500)
      }),
      { numRuns: 120 },
    )
  })

  test('not any names', async () => {
    const names = fc.array(fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), fc.string()), {
      minLength: 1,
      maxLength: 3,
    })
    await fc.assert(
      fc.asyncProperty(names, async (all) => {
        expect(await status('/api/resolve', JSON.stringify({ names: all }))).toBe(200)
      }),
      { numRuns: 60 },
    )
  })

  test('not any path or query', async () => {
    const url = fc.tuple(
      fc.constantFrom('/api/ingredients/', '/api/roles/', '/api/graph?around=', '/api/ingredients?text=', '/'),
      fc.oneof(fc.webPath(), fc.webQueryParameters(), fc.string().map(encodeURIComponent)),
    )
    await fc.assert(
      fc.asyncProperty(url, async ([start, end]) => {
        expect((await app.inject(`${start}${end}`)).statusCode).toBeLessThan(500)
      }),
      { numRuns: 60 },
    )
  })

  test('not any formula that fits the schema', async () => {
    const ids = [...world.knowledge.ingredients.keys(), ...[...world.knowledge.inventory.keys()].slice(0, 500)]
    const line = fc.record(
      {
        ingredient: fc.constantFrom(...ids),
        share_percent: fc.double({ min: 1e-6, max: 20, noNaN: true }),
        phase: fc.constantFrom('water', 'oil', 'cool-down'),
        strength_percent: fc.double({ min: 1e-6, max: 100, noNaN: true }),
      },
      { requiredKeys: ['ingredient', 'share_percent'] },
    )
    const formula = fc.record(
      {
        market: fc.constantFrom('eu', 'us'),
        product: fc.constantFrom('leave-on', 'rinse-off'),
        ph: fc.option(fc.double({ min: -1, max: 15, noNaN: true })),
        hottest_c: fc.option(fc.double({ min: -20, max: 250, noNaN: true })),
        areas: fc.uniqueArray(fc.constantFrom('face', 'eye', 'lip', 'hair', 'under-3')),
        lines: fc
          .array(line, { maxLength: 4 })
          .map((lines) => [{ ingredient: 'aqua', fills: true as const }, ...lines]),
      },
      { requiredKeys: ['market', 'product', 'ph', 'hottest_c', 'lines'] },
    )
    const question = fc.tuple(fc.constantFrom('/api/check', '/api/swaps', '/api/swap-sheet'), formula)
    await fc.assert(
      fc.asyncProperty(question, async ([url, one]) => {
        const missing = url === '/api/swaps' && { missing: [one.lines.at(-1)?.ingredient] }
        expect(await status(url, JSON.stringify({ formula: one, ...missing }))).toBe(200)
      }),
      { numRuns: 60 },
    )
  })
})
