import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import type { App } from '#api/routes/shared.ts'
import type { LessonReply, LessonShort } from '#engine/model/lesson-reply.ts'
import { realWorld } from '../helpers.ts'
import { ask } from './ask.ts'

let app: App
beforeAll(async () => {
  app = await buildApp({ world: realWorld(), rateLimit: false })
})
afterAll(() => app.close())

const URL = '/api/learn/lessons'
const { lessons, version } = realWorld().knowledge
const one = async (id: string) => (await ask(app, 'GET', `${URL}/${id}`)).body as unknown as LessonReply

test('all lessons are listed, ideas first, with the minutes they take', async () => {
  const { status, body } = await ask(app, 'GET', URL)
  const list = body['lessons'] as LessonShort[]
  expect([status, body['graphVersion'], list.length]).toEqual([200, version, lessons.size])
  const kinds = list.map(({ about }) => about.kind)
  expect(kinds).toEqual([...kinds].sort())
  expect(list.find(({ id }) => id === 'humectant')).toEqual({
    id: 'humectant',
    title: 'Humectant: holds water',
    about: { kind: 'role', id: 'humectant' },
    minutes: 4,
  })
})

test('every lesson comes whole, as it was written', async () => {
  for (const lesson of lessons.values()) {
    const { title, about, question, parts, seen, cautions, live } = lesson
    expect(await one(lesson.id)).toMatchObject({ title, about, question, parts, seen, cautions, live })
  }
})

test('a recipe to break comes as it was, broken and mended, with the names of its lines', async () => {
  const { recipe } = await one('humectant')
  const ids = (formula: NonNullable<typeof recipe>['before'] | undefined) =>
    formula?.lines.map(({ ingredient }) => ingredient)
  expect(ids(recipe?.before)).toContain('glycerin')
  expect(ids(recipe?.broken)).toContain('sodium-lactate')
  expect(ids(recipe?.mended)).toContain('propanediol')
  expect(recipe?.names).toMatchObject({ 'sodium-lactate': 'Sodium lactate', propanediol: 'Propanediol' })
})

test('sources come with title and address, statements with who checked them', async () => {
  const { sources, states } = await one('preservative-ph-window')
  expect(sources.map(({ id }) => id)).toEqual(['HPE_SB', 'ANDERSON1967'])
  expect(sources.filter(({ title, address }) => title === '' || address === '')).toEqual([])
  expect(new Set(states.map(({ checkedBy }) => checkedBy))).toEqual(new Set(['records', 'engine']))
})

test('a lesson that nobody wrote is 404', async () => {
  const { status, body } = await ask(app, 'GET', `${URL}/moonstone`)
  expect([status, body]).toMatchObject([404, { error: { code: 'unknown-lesson', at: '/id' } }])
})
