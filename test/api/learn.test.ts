import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import type { AskedItem } from '#engine/model/learn.ts'
import { makeItem } from '#engine/index.ts'
import { realWorld } from '../helpers.ts'
import { ask } from './ask.ts'

const ITEMS = '/api/learn/items'
const ANSWERS = '/api/learn/answers'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: realWorld(), rateLimit: false })
})
afterAll(() => app.close())

const draw = async (body: unknown): Promise<AskedItem[]> => (await ask(app, 'POST', ITEMS, body)).body['items'] as never

describe('items', () => {
  test('come without key or reason, the same for the same seed', async () => {
    const asked = { seed: 3, count: 6 }
    const items = await draw(asked)
    expect(items).toHaveLength(6)
    expect(await draw(asked)).toEqual(items)
    expect(await draw({ ...asked, seed: 4 })).not.toEqual(items)
    for (const item of items) {
      expect(Object.keys(item)).not.toEqual(expect.arrayContaining(['key']))
      expect(Object.keys(item)).not.toEqual(expect.arrayContaining(['because']))
    }
  })
  test('show a whole recipe where they are about one', async () => {
    const [item] = await draw({ seed: 3, count: 1, kinds: ['find-fault'] })
    expect(item?.recipe?.formula.lines.map(({ ingredient }) => ingredient).sort()).toEqual(
      Object.keys(item?.recipe?.names ?? {}).sort(),
    )
  })
})

describe('answers', () => {
  test('are judged again from the reference, with reason and sources', async () => {
    for (const { ref, id, choices } of await draw({ seed: 8, count: 6 })) {
      const item = makeItem(realWorld(), ref)
      const replies = await Promise.all(
        choices.map((choice) => ask(app, 'POST', ANSWERS, { item: ref, id, choice: choice.id })),
      )
      expect(replies.map(({ status }) => status)).toEqual(choices.map(() => 200))
      expect(replies.filter(({ body }) => body['right'] === true)).toHaveLength(1)
      for (const { body } of replies) {
        const { right, graphVersion, cited, ...answer } = body
        const { key, because, sources, about, after } = item!
        expect(answer).toEqual({ key, because, sources, about, ...(after && { after }) })
        expect((cited as { id: string }[]).map(({ id }) => id)).toEqual(
          sources.filter((one) => realWorld().knowledge.sources.has(one)),
        )
        expect([typeof right, graphVersion]).toEqual(['boolean', realWorld().knowledge.version])
      }
    }
  })
})

const REF = { kind: 'active-matter', seed: 1 }
test.each([
  [400, 'bad-request', ITEMS, { seed: 1 }, '/count'],
  [400, 'bad-request', ITEMS, { seed: 1, count: 21 }, '/count'],
  [400, 'bad-request', ITEMS, { seed: -1, count: 2 }, '/seed'],
  [400, 'bad-request', ITEMS, { seed: 1, count: 2, kinds: ['riddle'] }, '/kinds/0'],
  [400, 'bad-request', ITEMS, { seed: 1, count: 2, key: true }, '/key'],
  [404, 'unknown-role', ITEMS, { seed: 1, count: 2, roles: ['zzz'] }, '/roles/0'],
  [400, 'bad-request', ANSWERS, { item: REF }, '/choice'],
  [400, 'bad-request', ANSWERS, { item: { ...REF, seed: 1.5 }, choice: 'a' }, '/item/seed'],
  [404, 'unknown-role', ANSWERS, { item: { ...REF, role: 'zzz' }, choice: 'a' }, '/item/role'],
  [404, 'unknown-item', ANSWERS, { item: { ...REF, role: 'butter' }, choice: 'a' }, '/item'],
  [404, 'unknown-item', ANSWERS, { item: REF, id: '0000', choice: 'a' }, '/id'],
  [422, 'not-a-choice', ANSWERS, { item: REF, choice: 'a' }, '/choice'],
])('%i %s: %s %o', async (status, code, url, body, at) => {
  const reply = await ask(app, 'POST', url, body)
  expect(reply.status).toBe(status)
  expect(reply.body).toMatchObject({ error: { code, at } })
})
