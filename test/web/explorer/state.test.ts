import fc from 'fast-check'
import { expect, test } from 'vitest'
import { wayFrom, wayHref } from '#web/explorer/address.ts'
import { RELATIONS, USUAL } from '#web/explorer/relations.ts'
import { fromQuery, openNodes, rootOf, toQuery, VIEWS, WHOLE_SIZES } from '#web/explorer/state.ts'
import type { ExplorerState } from '#web/explorer/state.ts'

const id = fc.stringMatching(/^(role:|class:|limit:)?[a-z][a-z0-9-]{0,12}$/)
const step = fc.record({ from: id, relation: fc.constantFrom('plays', 'played-by', 'narrower'), to: id })
const state: fc.Arbitrary<ExplorerState> = fc.record({
  view: fc.constantFrom(...VIEWS),
  at: fc.option(id),
  way: fc.array(step, { maxLength: 5 }),
  open: fc.uniqueArray(id, { maxLength: 6 }),
  full: fc.uniqueArray(
    id.map((one) => `${one}>plays>in`),
    { maxLength: 3 },
  ),
  relations: fc.subarray([...RELATIONS]),
  ph: fc.option(fc.integer({ min: 0, max: 140 }).map((tenths) => tenths / 10)),
  heat_c: fc.option(fc.integer({ min: 20, max: 200 })),
  whole: fc.option(fc.constantFrom(...WHOLE_SIZES)),
})

test('a link carries the whole state', () => {
  fc.assert(
    fc.property(state, (one) => {
      const link = new URLSearchParams(toQuery(one).toString())
      expect(fromQuery(link)).toEqual(one)
    }),
  )
})

test('a bare address shows the usual: a drawing of all relations but holds-with, at no pH and no heat', () => {
  expect(fromQuery(new URLSearchParams('at=glycerin'))).toEqual({
    view: 'drawing',
    at: 'glycerin',
    way: [],
    open: [],
    full: [],
    relations: USUAL,
    ph: null,
    heat_c: null,
    whole: null,
  })
  expect(USUAL).not.toContain('holds-with')
})

test('what an address says wrongly is left out, and no value is never 0', () => {
  const wrong = fromQuery(new URLSearchParams('at=&view=pie&ph=&heat=hot&relations=likes,plays&whole=7&path=a~plays'))
  expect(wrong).toMatchObject({ at: null, view: 'drawing', ph: null, heat_c: null, relations: ['plays'], whole: null })
  expect(wrong.way).toEqual([])
  expect(fromQuery(new URLSearchParams('ph=15&heat=1000'))).toMatchObject({ ph: null, heat_c: null })
})

test('the way of a swap opens as it was told, and nothing beside it is open', () => {
  const way = [
    { from: 'glycerin', relation: 'plays', to: 'role:humectant' },
    { from: 'role:humectant', relation: 'played-by', to: 'sorbitol' },
  ]
  const opened = fromQuery(new URL(wayHref(way), 'http://localhost').searchParams)
  expect(opened.way).toEqual(way)
  expect(rootOf(opened)).toBe('glycerin')
  expect(openNodes(opened)).toEqual([])
  expect(wayFrom('a~b~c~d,e')).toEqual([])
})

test('of a neighbourhood the middle is always open', () => {
  expect(openNodes(fromQuery(new URLSearchParams('at=glycerin&open=aqua,glycerin')))).toEqual(['glycerin', 'aqua'])
})
