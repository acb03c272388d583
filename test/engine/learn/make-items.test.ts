import { describe, expect, test } from 'vitest'
import { answerItem, makeItem, makeItems, withoutKey } from '#engine/index.ts'
import { chanceOf } from '#engine/learn/chance.ts'
import { KINDS_OF_A_ROLE } from '#engine/learn/make-items.ts'
import { ITEM_KINDS } from '#engine/model/learn.ts'
import type { Item } from '#engine/model/learn.ts'
import { makeWorld, realWorld } from '../../helpers.ts'
import { auditItem } from '../../score/audit-item.ts'

const world = realWorld()
const QUEUES = 10
const queues: Item[][] = []
for (let seed = 1000; seed < 1000 + QUEUES; seed += 1) queues.push([...makeItems(world, { seed, count: 20 })])
const items = queues.flat()

describe('two hundred items', () => {
  test('are as many as were asked for, of every kind, none twice in a queue', () => {
    expect(queues.map((queue) => new Set(queue.map(({ id }) => id)).size)).toEqual(queues.map(() => 20))
    expect([...new Set(items.map(({ kind }) => kind))].sort()).toEqual([...ITEM_KINDS].sort())
  })
  test('have a right key and no choice that could be defended', () => {
    expect(items.flatMap((item) => auditItem(world, item))).toEqual([])
  })
  test('are made again from their reference alone', () => {
    for (const item of items.slice(0, 24)) expect(makeItem(world, item.ref)).toEqual(item)
  })
  test('do not give the key away by its place', () => {
    const places = items.map(({ choices, key }) => choices.findIndex(({ id }) => id === key))
    for (const place of [0, 1, 2, 3]) {
      expect(places.filter((one) => one === place).length / items.length).toBeGreaterThan(0.12)
    }
  })
  test('cite sources that can be looked up', () => {
    const cited = new Set(items.flatMap(({ sources }) => sources.flatMap((id) => id.split(/\s*;\s*/))))
    expect([...cited].filter((id) => !world.knowledge.sources.has(id) && id !== 'practice')).toEqual([])
  })
})

describe('the audit', () => {
  const broken = (kind: Item['kind'], change: (item: Item) => Item) =>
    items
      .filter((item) => item.kind === kind)
      .slice(0, 4)
      .map((item) => auditItem(world, change(item)).length > 0)

  test.each(ITEM_KINDS)('catches another choice as key: %s', (kind) => {
    const other = ({ choices, key }: Item) => choices.find(({ id }) => id !== key)?.id ?? ''
    const caught = broken(kind, (item) => ({ ...item, key: other(item) }))
    expect(caught.length).toBeGreaterThan(0)
    expect(caught).not.toContain(false)
  })
})

test('a role asked for is the role asked about, or one below it', () => {
  const asked = [...makeItems(world, { seed: 5, count: 12, roles: ['emollient'] })]
  expect(asked.length).toBeGreaterThan(4)
  for (const { kind, about } of asked) {
    expect(KINDS_OF_A_ROLE).toContain(kind)
    expect(world.roles.above(about.role ?? '')).toContain('emollient')
  }
})

test('only kinds that are asked for come', () => {
  const asked = [...makeItems(world, { seed: 5, count: 6, kinds: ['active-matter'] })]
  expect(asked.map(({ kind }) => kind)).toEqual(Array(6).fill('active-matter'))
})

test('a recipe with lye or strong acid in it comes with its caution', () => {
  const shown = items.flatMap(({ recipe }) => recipe ?? [])
  const withLye = shown.filter(({ formula }) => formula.lines.some((line) => line.ingredient === 'sodium-hydroxide'))
  expect(withLye.length).toBeGreaterThan(3)
  for (const { cautions } of withLye) expect(cautions.join(' ')).toMatch(/hydroxide/i)
})

test('what a learner sees holds neither key nor reason', () => {
  for (const item of items.slice(0, 12)) {
    const shown = withoutKey(item)
    expect(shown).not.toHaveProperty('key')
    expect(shown).not.toHaveProperty('because')
    expect(shown).not.toHaveProperty('about')
    expect(shown).not.toHaveProperty('after')
  }
})

test('only the key is right', () => {
  const [item] = items as [Item]
  const right = item.choices.filter(({ id }) => answerItem(item, id).right).map(({ id }) => id)
  expect(right).toEqual([item.key])
})

test('a world without ingredients makes no items', () => {
  expect([...makeItems(makeWorld(), { seed: 1, count: 5 })]).toEqual([])
})

test('a seed or count out of range is named', () => {
  expect(() => makeItem(world, { kind: 'plays-role', seed: -1 })).toThrow(/^seed: /)
  expect(() => [...makeItems(world, { seed: 1, count: 21 })]).toThrow(/^count: /)
})

test('chance is even over its range and fixed by its seed', () => {
  const draws = Array.from({ length: 10_000 }, chanceOf(42))
  for (const tenth of [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]) {
    expect(draws.filter((one) => Math.floor(one * 10) === tenth).length / draws.length).toBeCloseTo(0.1, 1)
  }
  expect(Array.from({ length: 5 }, chanceOf(42))).toEqual(draws.slice(0, 5))
  expect(Array.from({ length: 5 }, chanceOf(43))).not.toEqual(draws.slice(0, 5))
})
