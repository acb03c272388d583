import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import { ask } from './ask.ts'
import { formula, smallWorld } from './small-world.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: smallWorld(), rateLimit: false })
})
afterAll(() => app.close())
const get = async (url: string) => (await ask(app, 'GET', url)).body
const post = async (url: string, body: unknown) => (await ask(app, 'POST', url, body)).body

const graphVersion = 'small-1'
describe('questions about a formula', () => {
  test('check gives verdict, findings, windows, roles and form', async () => {
    const reply = await post('/api/check', { formula: formula() })
    expect(reply).toMatchObject({ form: 'solution', formDerived: true, graphVersion })
    expect(Object.keys(reply).sort()).toEqual(
      ['verdict', 'findings', 'windows', 'common_ph', 'roles', 'form', 'formDerived', 'graphVersion'].sort(),
    )
  })
  test('the order of lines changes no finding', async () => {
    const { lines, ...rest } = formula()
    const there = await post('/api/check', { formula: { ...rest, lines } })
    const back = await post('/api/check', { formula: { ...rest, lines: [...lines].reverse() } })
    expect(back['findings']).toEqual(there['findings'])
    expect(back['verdict']).toEqual(there['verdict'])
  })
  test('an alias is taken for its record', async () => {
    const [, ...others] = formula().lines
    const lines = [{ ingredient: 'water', fills: true }, ...others]
    expect(await post('/api/check', { formula: formula({ lines }) })).toEqual(
      await post('/api/check', { formula: formula() }),
    )
  })
  test('swaps name what stands in', async () => {
    expect(await post('/api/swaps', { formula: formula(), missing: ['glycerin'], limit: 3 })).toMatchObject({
      roles: [{ ingredient: 'glycerin', role: 'humectant' }],
      graphVersion,
    })
  })
  test('the sheet has one entry a line', async () => {
    const reply = await post('/api/swap-sheet', { formula: formula() })
    expect(reply).toMatchObject({ graphVersion })
    expect((reply['lines'] as { ingredient: string }[]).map(({ ingredient }) => ingredient)).toEqual([
      'aqua',
      'glycerin',
      'sodium-benzoate',
    ])
  })
  test('stand-ins need no recipe', async () => {
    expect(await get('/api/ingredients/sorbitol/stand-ins?product=rinse-off&market=us')).toMatchObject({ graphVersion })
  })
  test('names are resolved one by one, in order', async () => {
    const reply = await post('/api/resolve', { names: ['glycerol', 'aqua'] })
    expect(reply).toMatchObject({
      results: [
        { typed: 'glycerol', status: 'found', ingredient: 'glycerin' },
        { typed: 'aqua', status: 'found', ingredient: 'aqua' },
      ],
      graphVersion,
    })
  })
})
