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
const get = async (query: string) => ask(app, 'GET', `/api/ingredients?${query}`)
const ids = async (query: string) => ((await get(query)).body['ingredients'] as { id: string }[]).map(({ id }) => id)

describe('traits in the query', () => {
  test('find what keeps and works at a pH, and count what is not known', async () => {
    expect(await ids('ph=3.5')).toEqual(['citric-acid', 'sodium-benzoate'])
    expect(await ids('ph=5')).toEqual(['citric-acid']) // the benzoate works at 2 to 4
    expect((await get('ph=3.5')).body).toMatchObject({ total: 2, notKnown: 3 })
    expect(await ids('ph=3.5&unknown=include')).toHaveLength(5)
  })
  test('several roles are any of them', async () => {
    expect(await ids('role=acid,preservative')).toEqual(['citric-acid', 'sodium-benzoate'])
  })
  test('join', async () => {
    expect(await ids('ph=3.5&heat_c=95')).toEqual(['citric-acid'])
    expect(await ids('ph=3.5&solubility=water&role=preservative')).toEqual(['sodium-benzoate'])
    expect(await ids('charge=nonionic&tier=short')).toEqual(['glycerin', 'sorbitol'])
    expect(await ids('cold=true')).toEqual([])
    expect(await ids('text=acid&ph=3')).toEqual(['citric-acid'])
    expect(await ids('beside=sodium-benzoate&role=acid')).toEqual(['citric-acid'])
  })
  test.each([
    ['ph=acid', /^ph: must be a number such as 5.5/],
    ['ph=16', /^ph: expected -1 to 15, got 16/],
    ['heat_c=300', /^heat_c: expected -20 to 250, got 300/],
    ['cold=yes', /^cold: must be "true"/],
    ['solubility=air', /^solubility: must be one of water, oil/],
    ['charge=nonionic2', /^charge: must be one of nonionic/],
    ['tier=best', /^tier: must be one of full, short, inventory/],
    ['unknown=all', /^unknown: must be "include"/],
    [`beside=${Array.from({ length: 21 }, () => 'aqua').join(',')}`, /^beside: must NOT have more than 20 ids/],
  ])('%s is refused by name', async (query, message) => {
    const { status, body } = await get(query)
    expect(status).toBe(400)
    expect((body['error'] as { message: string }).message).toMatch(message)
  })
  test.each([
    ['role=acid,zzz', 'unknown-role'],
    ['beside=zzz', 'unknown-ingredient'],
  ])('%s is not found', async (query, code) => {
    const { status, body } = await get(query)
    expect(status).toBe(404)
    expect(body).toMatchObject({ error: { code } })
  })
})
