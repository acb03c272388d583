import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { realWorld } from '../helpers.ts'
import { ask } from './ask.ts'
import { smallWorld } from './small-world.ts'

interface Suggestion {
  ingredient: string
  name?: string
  by: string
  tier: string
  roles: string[]
}

describe('a pick list of a few names', () => {
  let app: App
  beforeAll(async () => {
    app = await buildApp({ world: smallWorld(), rateLimit: false })
  })
  afterAll(() => app.close())
  const get = (query: string) => ask(app, 'GET', `/api/names?${query}`)

  test('says which name fitted, what kind of record it is and what it does', async () => {
    expect((await get('text=glycero')).body).toEqual({
      names: [
        {
          ingredient: 'glycerin',
          inci: 'GLYCERIN',
          tier: 'short',
          name: 'glycerol',
          by: 'beginning',
          roles: ['Humectant'],
        },
      ],
      graphVersion: 'small-1',
    })
  })
  test('takes in names of the inventory that have no record', async () => {
    expect((await get('text=ure')).body).toMatchObject({ names: [{ ingredient: 'urea', tier: 'inventory' }] })
  })
  test('an alias leads to its record', async () => {
    expect((await get('text=wat')).body).toMatchObject({ names: [{ ingredient: 'aqua', name: 'water' }] })
  })
  test('nothing typed and nothing like it give an empty list', async () => {
    expect((await get('text=')).body).toMatchObject({ names: [] })
    expect((await get('text=%3F%3F')).body).toMatchObject({ names: [] })
  })
  test('a missing text, a strange key and a limit of too many are refused', async () => {
    expect((await get('')).status).toBe(400)
    expect((await get('text=a&words=b')).status).toBe(400)
    expect((await get('text=a&limit=201')).status).toBe(400)
    expect((await get('text=a&limit=0')).status).toBe(400)
  })
})

describe('over the whole inventory', () => {
  let app: App
  beforeAll(async () => {
    app = await buildApp({ world: realWorld(), rateLimit: false })
  }, 60_000)
  afterAll(() => app.close())
  const names = async (text: string, limit = 12): Promise<Suggestion[]> => {
    const { body } = await ask(app, 'GET', `/api/names?limit=${limit}&text=${encodeURIComponent(text)}`)
    return body['names'] as Suggestion[]
  }

  test.each([
    ['gl', 'glycerin'],
    ['shea', 'butyrospermum-parkii-butter'],
    ['almond oil', 'prunus-amygdalus-dulcis-oil'],
    ['niacin', 'niacin'],
    ['glycrin', 'glycerin'],
  ])('%s brings %s first', async (typed, id) => {
    expect((await names(typed))[0]).toMatchObject({ ingredient: id })
  })
  test('a word within a name is found: butters that begin with their plant', async () => {
    const ids = (await names('butter', 30)).map(({ ingredient }) => ingredient)
    expect(ids).toContain('theobroma-cacao-seed-butter')
    expect(ids).toContain('mangifera-indica-seed-butter')
  })
  test('records come before names known from the inventory only, but for a whole name', async () => {
    const tiers = (await names('cet', 60)).map(({ tier }) => tier)
    expect(tiers.indexOf('inventory')).toBeGreaterThan(tiers.lastIndexOf('full'))
  })
  test('what is only like the text comes where no name carries it', async () => {
    expect((await names('squalane')).map(({ by }) => by)).not.toContain('likeness')
    expect((await names('squallane')).map(({ by }) => by)).toContain('likeness')
  })
  test('no ingredient stands in the list twice', async () => {
    const ids = (await names('vitamin', 50)).map(({ ingredient }) => ingredient)
    expect(new Set(ids).size).toBe(ids.length)
  })
})
