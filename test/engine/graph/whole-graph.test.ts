import { describe, expect, test } from 'vitest'
import { fraction, placesOf } from '#engine/graph/places.ts'
import { wholeGraph } from '#engine/graph/whole-graph.ts'
import { makeWorld, realWorld } from '../../helpers.ts'

const SEEN = { source: 'practice', locator: 'usual practice', access: 'common-practice', date: '2026-11-25' }
const thing = (id: string, role?: string) => ({
  ...{ id, inci: id.toUpperCase(), seen: SEEN },
  ...(role !== undefined && { roles: [{ role }] }),
})
const ROLES = { acid: { label: 'Acid', says: 'Lowers the pH', phase: 'water' } }
const rows = [
  { node: 'role:acid', x: '0', y: '0' },
  { node: 'citric-acid', x: '1000', y: '500' },
  { node: 'gone', x: '9', y: '9' },
]
const small = (order = 1) => {
  const ingredients = [thing('citric-acid', 'acid'), thing('lactic-acid', 'acid'), thing('mica')]
  return makeWorld({
    roles: ROLES,
    ingredients: order > 0 ? ingredients : ingredients.reverse(),
    tables: [{ path: 'tables/graph-layout.tsv', rows }],
  })
}

describe('places in the drawing', () => {
  test('are those of the table; a row of a node that is gone is passed over', () => {
    const places = placesOf(small())
    expect(places.get('citric-acid')).toEqual({ x: 1000, y: 500 })
    expect(places.has('gone')).toBe(false)
  })
  test('of a node without a row lie beside its neighbours, of one joined to nothing around all', () => {
    const places = placesOf(small())
    const { x, y } = places.get('lactic-acid')!
    expect(Math.hypot(x, y)).toBeLessThan(50) // its only neighbour, the role, stands at 0, 0
    const alone = places.get('mica')!
    expect(Math.hypot(alone.x, alone.y)).toBeCloseTo(1050, 6)
  })
  test('hang neither on the order of records nor on chance', () => {
    expect(new Map([...placesOf(small(-1))].sort())).toEqual(new Map([...placesOf(small())].sort()))
    expect(fraction('glycerin')).toBe(fraction('glycerin'))
    expect(fraction('glycerin')).not.toBe(fraction('glycerine'))
  })
  test('are found where nothing is stored at all', () => {
    const bare = placesOf(makeWorld({ roles: ROLES, ingredients: [thing('citric-acid', 'acid')] }))
    expect([...bare.values()].every(({ x, y }) => Number.isFinite(x + y))).toBe(true)
  })
})

describe('the whole graph as it stands', () => {
  const { nodes, edges, relations } = wholeGraph(realWorld())
  const { graph } = realWorld()
  test('holds every node once and every stated edge', () => {
    expect(new Set(nodes.map(({ id }) => id)).size).toBe(graph.order)
    const words = new Set(
      edges.map(([from, to, relation]) => `${nodes[from]!.id}>${relations[relation]}>${nodes[to]!.id}`),
    )
    expect(words.size).toBe(edges.length)
    graph.forEachEdge((_key, { relation }, from, to) => expect(words.has(`${from}>${relation}>${to}`)).toBe(true))
  })
  test('begins with the roles, then what has most edges', () => {
    const roles = nodes.filter(({ kind }) => kind === 'role').length
    expect(nodes.slice(0, roles).every(({ kind }) => kind === 'role')).toBe(true)
    const links = nodes.slice(roles).map((node) => node.links)
    expect(links).toEqual([...links].sort((a, b) => b - a))
  })
  test('has a stored place for nearly all that is joined to something', () => {
    const stored = new Set(
      realWorld()
        .knowledge.tables.get('graph-layout')!
        .map((row) => row['node']),
    )
    const joined = nodes.filter(({ links }) => links > 0)
    const open = joined.filter(({ id }) => !stored.has(id))
    expect(open.length / joined.length).toBeLessThan(0.1) // beyond that: npm run layout
  })
  test('has no two nodes in one place', () => {
    expect(new Set(nodes.map(({ x, y }) => `${x} ${y}`)).size).toBe(nodes.length)
  })
})
