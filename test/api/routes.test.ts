import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { ask } from './ask.ts'
import { smallWorld } from './small-world.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: smallWorld(), rateLimit: false })
})
afterAll(() => app.close())
const get = async (url: string) => (await ask(app, 'GET', url)).body

const graphVersion = 'small-1'
const practice = {
  kind: 'rule-of-thumb',
  source: 'practice',
  locator: 'usual practice',
  access: 'common-practice',
  date: '2026-11-25',
}
const glycerin = {
  id: 'glycerin',
  inci: 'GLYCERIN',
  tier: 'short',
  names: ['glycerol'],
  roles: ['humectant'],
  classes: ['nonionic'],
}
const sorbitol = {
  id: 'sorbitol',
  inci: 'SORBITOL',
  tier: 'short',
  names: [],
  roles: ['humectant'],
  classes: ['nonionic'],
}
const urea = { id: 'urea', inci: 'UREA', tier: 'inventory', names: [], roles: ['humectant'], classes: [] }

test('health states the size of the graph', async () => {
  expect(await get('/api/health')).toEqual({
    status: 'ok',
    graph: { version: graphVersion, ingredients: 5, roles: 5, classes: 1, edges: 11, claims: 18 },
  })
})

describe('find', () => {
  test('a role finds who plays it, records only, by id', async () => {
    expect(await get('/api/ingredients?role=humectant')).toEqual({
      ingredients: [glycerin, sorbitol],
      next: null,
      total: 2,
      graphVersion,
    })
  })
  test('a broader role finds who plays a narrower one', async () => {
    expect(await get('/api/ingredients?role=water-phase')).toMatchObject({ ingredients: [{ id: 'aqua' }] })
  })
  test('a text finds inventory names too, behind the records', async () => {
    expect(await get('/api/ingredients?text=ure')).toEqual({ ingredients: [urea], next: null, total: 1, graphVersion })
    expect(await get('/api/ingredients?text=GLYCÉROL')).toMatchObject({ ingredients: [glycerin] })
  })
  test('a text of signs finds nothing, an empty one is no filter', async () => {
    expect(await get('/api/ingredients?text=%3F%3F')).toMatchObject({ ingredients: [], total: 0 })
    expect(await get('/api/ingredients?text=')).toMatchObject({ total: 5 })
  })
  test('pages follow one another without gap or repetition', async () => {
    const first = await get('/api/ingredients?limit=3')
    const second = await get(`/api/ingredients?limit=3&after=${String(first['next'])}`)
    const ids = [first, second].flatMap((page) => (page['ingredients'] as { id: string }[]).map(({ id }) => id))
    expect(ids).toEqual(['aqua', 'citric-acid', 'glycerin', 'sodium-benzoate', 'sorbitol'])
    expect(second).toMatchObject({ next: null, total: 5 })
  })
})

describe('one ingredient', () => {
  test('comes whole', async () => {
    const claim = (property: string, n: number) => ({ id: `sodium-benzoate#${property}/${n}`, property, ...practice })
    const printed = { source: 'S-1', access: 'read', kind: 'assertion' }
    const habit = {
      evidence: {
        code: 'ECO:0000306',
        label: 'inference from background scientific knowledge used in manual assertion',
      },
    }
    const cited = {
      evidence: {
        code: 'ECO:0000304',
        label: 'author statement supported by traceable reference used in manual assertion',
      },
    }
    const limit = { id: 'eu-v-1', market: 'eu', title: 'Annex V, entry 1, Benzoic acid and its salt' }
    expect(await get('/api/ingredients/sodium-benzoate')).toEqual({
      id: 'sodium-benzoate',
      inci: 'SODIUM BENZOATE',
      tier: 'short',
      cas: [],
      names: { exact: [], broad: [], narrow: [], former: [], foreign: [] },
      roles: [
        { role: 'preservative', label: 'Preservative', when: 'at pH 2 to 5, without Acid', ...practice, ...habit },
      ],
      classes: [],
      madeOf: [],
      windows: { ph_stability: { min: 2, max: 8 }, ph_effective: { min: 2, max: 4 }, heat_max_c: 90 },
      claims: [
        { ...claim('solubility', 0), is: 'water', unit: '', used: true, ...habit },
        { ...claim('ph_stability', 0), min: 2, max: 8, unit: 'pH', used: true, ...habit },
        { ...claim('heat_max_c', 0), value: 90, unit: 'C', used: true, ...habit },
        { ...claim('ph_effective', 0), ...printed, locator: 'p. 1', min: 2, max: 4, unit: 'pH', used: true, ...cited },
        { ...claim('ph_effective', 1), ...printed, locator: 'p. 9', min: 5, max: 6, unit: 'pH', used: false, ...cited },
      ],
      contested: ['ph_effective'],
      decisions: [
        {
          property: 'ph_effective',
          claim: 'sodium-benzoate#ph_effective/0',
          why: 'Put first in the record when it was reviewed (read in its source), before the other one.',
        },
      ],
      neighbours: [
        {
          relation: 'limited-by',
          direction: 'out',
          node: 'limit:eu-v-1',
          label: 'Benzoic acid and its salt',
          says: 'Benzoic acid and its salt',
          kind: 'law',
          source: 'S-1',
          locator: 'ref. no 1',
          access: 'read',
          date: '2026-11-25',
        },
        { relation: 'plays', direction: 'out', node: 'role:preservative', label: 'Preservative', ...practice },
      ],
      limits: [
        {
          ...limit,
          text: [
            'at most 0.5 % as benzoic acid as preservative, in leave-on products',
            'prohibited as preservative, on eye',
          ],
        },
      ],
      cautions: ['dissolve it before the acid goes in'],
      sources: [{ id: 'S-1', title: 'A handbook', locator: 'shelf 1' }],
      graphVersion,
    })
  })
  test('an alias gives the record, an inventory name what was derived, a blend its parts', async () => {
    expect(await get('/api/ingredients/water')).toMatchObject({ id: 'aqua', tier: 'short' })
    expect(await get('/api/ingredients/urea')).toMatchObject({
      tier: 'inventory',
      roles: [{ role: 'humectant', kind: 'derived' }],
      neighbours: [{ relation: 'plays', node: 'role:humectant', direction: 'out' }],
    })
    expect(await get('/api/ingredients/urea-and-glycerin')).toMatchObject({ tier: 'inventory' })
  })
  test('edges that point at it are neighbours too', async () => {
    expect(await get('/api/ingredients/sorbitol')).toMatchObject({
      neighbours: expect.arrayContaining([
        {
          relation: 'stands-in-for',
          direction: 'in',
          node: 'glycerin',
          label: 'GLYCERIN',
          says: 'same job',
          ...practice,
        },
      ]),
    })
  })
})

describe('roles', () => {
  const humectant = {
    id: 'humectant',
    label: 'Humectant',
    says: 'Holds water',
    phase: 'water',
    confusedWith: ['water'],
    players: 2,
  }
  test('are listed by id', async () => {
    const reply = await get('/api/roles')
    expect((reply['roles'] as { id: string }[]).map(({ id }) => id)).toEqual([
      'acid',
      'humectant',
      'preservative',
      'water',
      'water-phase',
    ])
    expect((reply['roles'] as unknown[])[1]).toEqual(humectant)
  })
  test('one says who plays it and how a stand-in is sought', async () => {
    expect(await get('/api/roles/humectant')).toEqual({
      ...humectant,
      narrower: [],
      playedBy: [glycerin, sorbitol],
      swap: {
        scope: 'humectant',
        dose: 'same',
        lost: 'fine',
        must: ['it has to dissolve in water'],
        criteria: [{ name: 'charge', weight: 2, why: 'charge' }],
      },
      graphVersion,
    })
    expect(await get('/api/roles/water-phase')).toMatchObject({ narrower: ['water'], playedBy: [{ id: 'aqua' }] })
  })
})

describe('graph', () => {
  test('one relation is followed alone, with its evidence', async () => {
    expect(await get('/api/graph?around=glycerin&relations=stands-in-for')).toEqual({
      nodes: [
        { id: 'glycerin', kind: 'ingredient', label: 'GLYCERIN', links: 3 },
        { id: 'sorbitol', kind: 'ingredient', label: 'SORBITOL', links: 3 },
      ],
      edges: [
        {
          id: 'glycerin>stands-in-for>sorbitol',
          from: 'glycerin',
          to: 'sorbitol',
          relation: 'stands-in-for',
          says: 'same job',
          ratio: 1,
          grade: 'good',
          ...practice,
        },
      ],
      cut: false,
      next: null,
      total: 2,
      graphVersion,
    })
  })
  test('a node says where it keeps, works and what heat it bears, as far as that is known', async () => {
    const { nodes } = await get('/api/graph?around=sodium-benzoate')
    expect((nodes as unknown[])[0]).toMatchObject({
      id: 'sodium-benzoate',
      windows: { ph_stability: { min: 2, max: 8 }, heat_max_c: 90 },
    })
  })
  test('the whole graph comes at once, each node with its place, each edge by the places of its ends', async () => {
    const { nodes, edges, relations, ...rest } = await get('/api/graph/whole')
    const list = nodes as { id: string; x: number; y: number }[]
    expect(rest).toEqual({ graphVersion })
    expect(list.map(({ id }) => id)).toEqual(expect.arrayContaining(['glycerin', 'role:humectant', 'class:nonionic']))
    expect(list.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true)
    const words = (edges as number[][]).map(([from, to, relation]) =>
      [list[from!]!.id, (relations as string[])[relation!], list[to!]!.id].join(' '),
    )
    expect(words).toContain('glycerin stands-in-for sorbitol')
    expect(words).toContain('glycerin plays role:humectant')
    expect(words.some((word) => word.includes('holds-with'))).toBe(false)
    expect(new Set(words).size).toBe(words.length)
  })
  test('more steps reach further', async () => {
    const nodes = async (steps: number) =>
      (await get(`/api/graph?around=glycerin&steps=${steps}`))['nodes'] as unknown[]
    expect(await nodes(1)).toHaveLength(4)
    expect(await nodes(2)).toHaveLength(5)
    expect(await nodes(3)).toHaveLength(7)
  })
  test('holds-with comes only when asked for, with the window in which both keep', async () => {
    const all = await get('/api/graph?around=citric-acid&steps=2')
    expect(JSON.stringify(all)).not.toContain('holds-with')
    expect(await get('/api/graph?around=citric-acid&relations=holds-with')).toMatchObject({
      edges: [{ from: 'citric-acid', to: 'sodium-benzoate', ph: { min: 2, max: 7 }, heat_c: { max: 90 } }],
    })
  })
  test('roles, classes and limits stand in the middle as well', async () => {
    expect(await get('/api/graph?around=role:acid')).toMatchObject({
      nodes: [{ kind: 'role' }, { id: 'citric-acid' }],
    })
    expect(await get('/api/graph?around=class:nonionic')).toMatchObject({ nodes: [{ kind: 'class' }, {}, {}] })
    expect(await get('/api/graph?around=limit:eu-v-1')).toMatchObject({ nodes: [{ kind: 'limit' }, {}] })
  })
})
