import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { realWorld } from '../helpers.ts'
import { ask } from './ask.ts'
import { smallWorld } from './small-world.ts'

interface Use {
  ingredient: string | null
  on: string
  text: string
  claim?: { id: string; source: string }
}

describe('sources of a small world', () => {
  let app: App
  beforeAll(async () => {
    app = await buildApp({ world: smallWorld(), rateLimit: false })
  })
  afterAll(() => app.close())

  test('the list says what each is and how much rests on it; what is not stated is null', async () => {
    expect((await ask(app, 'GET', '/api/sources')).body).toEqual({
      sources: [
        {
          id: 'S-1',
          title: 'A handbook',
          kind: 'book',
          year: null,
          locator: 'shelf 1',
          link: null,
          grade: '',
          statements: 4,
        },
      ],
      next: null,
      total: 1,
      graphVersion: 'small-1',
    })
  })
  test('a source lists facts and law that rest on it, each with its own place', async () => {
    const { body } = await ask(app, 'GET', '/api/sources/S-1')
    expect(body).toMatchObject({ ingredients: 1, total: 4, next: null, singleOnly: false, note: '' })
    const uses = body['uses'] as (Use & { locator: string })[]
    expect(uses.map(({ ingredient, on, locator }) => [ingredient, on, locator])).toEqual([
      [null, 'limit', 'ref. no 1'],
      [null, 'limit', 'ref. no 1'],
      ['sodium-benzoate', 'fact', 'p. 1'],
      ['sodium-benzoate', 'fact', 'p. 9'],
    ])
    expect(uses[2]?.claim).toMatchObject({
      property: 'ph_effective',
      min: 2,
      max: 4,
      evidence: { code: 'ECO:0000304' },
    })
  })
  test('pages of statements follow one another without gap', async () => {
    const first = (await ask(app, 'GET', '/api/sources/S-1?limit=3')).body
    const second = (await ask(app, 'GET', `/api/sources/S-1?limit=3&after=${String(first['next'])}`)).body
    expect([first, second].map(({ uses }) => (uses as Use[]).length)).toEqual([3, 1])
    expect(second).toMatchObject({ next: null, total: 4 })
  })
  test('a strange id, kind or page is refused by name', async () => {
    expect(await ask(app, 'GET', '/api/sources/zzz')).toMatchObject({
      status: 404,
      body: { error: { code: 'unknown-source', at: '/id' } },
    })
    expect((await ask(app, 'GET', '/api/sources?kind=rumour')).status).toBe(400)
    expect((await ask(app, 'GET', '/api/sources/S-1?after=x')).status).toBe(400)
  })
})

describe('the real sources', () => {
  let app: App
  beforeAll(async () => {
    app = await buildApp({ world: realWorld(), rateLimit: false })
  }, 60_000)
  afterAll(() => app.close())
  const get = async (url: string) => (await ask(app, 'GET', url)).body

  test('every statement on the page of a source names that source', async () => {
    const { uses } = (await get('/api/sources/JACOBS1975?limit=200')) as unknown as {
      uses: (Use & { source: string })[]
    }
    expect(uses.length).toBeGreaterThan(0)
    for (const { source } of uses) expect(source.split('; ')).toContain('JACOBS1975')
  })
  test('of a collection that may not be given out as a table the values are left to the single ingredient', async () => {
    const { uses, singleOnly } = (await get('/api/sources/IUPAC-PKA')) as unknown as {
      uses: Use[]
      singleOnly: boolean
    }
    expect(singleOnly).toBe(true)
    expect(uses.filter(({ on }) => on === 'fact').length).toBeGreaterThan(0)
    expect(uses.every(({ claim }) => claim === undefined)).toBe(true)
  })
  test('words and kind narrow the list; title, year and address are told apart', async () => {
    const { sources } = (await get('/api/sources?text=influence%20accelerated&kind=paper')) as unknown as {
      sources: Record<string, unknown>[]
    }
    expect(sources).toEqual([
      expect.objectContaining({ id: 'JACOBS1975', year: 1975, link: 'https://library.scconline.org/v026n02/34' }),
    ])
  })
  test('the law is told as law with the year of its export', async () => {
    expect(await get('/api/sources/S-AN5-2026?limit=1')).toMatchObject({ kind: 'law', year: 2026 })
  })
})
