import { describe, expect, test } from 'vitest'
import { graphAround } from '#engine/graph/graph-around.ts'
import type { GraphPart, GraphQuery } from '#engine/graph/graph-around.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { realWorld } from '../../helpers.ts'

const part = (query: GraphQuery): GraphPart => graphAround(realWorld(), query)!

function allPages(query: GraphQuery): GraphPart[] {
  const pages = [part(query)]
  for (let last = pages[0]!; last.next !== null; last = pages.at(-1)!) pages.push(part({ ...query, after: last.next }))
  return pages
}

describe('pages of a neighbourhood', () => {
  const query: GraphQuery = { around: 'glycerin', steps: 2 }
  const pages = allPages({ ...query, limit: 60 })
  const nodes = pages.flatMap((page) => page.nodes.map(({ id }) => id))
  test('hold every node once and every edge once', () => {
    expect(nodes).toHaveLength(pages[0]!.total)
    expect(new Set(nodes).size).toBe(nodes.length)
    const edges = pages.flatMap((page) => page.edges.map(({ id }) => id))
    expect(new Set(edges).size).toBe(edges.length)
    const whole = allPages({ ...query, limit: 200 }).flatMap((page) => page.edges.map(({ id }) => id))
    expect([...edges].sort()).toEqual([...whole].sort())
  })
  test('can be drawn one onto the other: no edge ends at a node that is yet to come', () => {
    const given = new Set<string>()
    for (const page of pages) {
      for (const { id } of page.nodes) given.add(id)
      for (const { from, to } of page.edges) expect(given.has(from) && given.has(to)).toBe(true)
    }
  })
  test('say that they are cut until the last', () => {
    expect(pages.slice(0, -1).every(({ cut }) => cut)).toBe(true)
    expect(pages.at(-1)).toMatchObject({ cut: false, next: null })
  })
  test('begin in the middle, then words, then what is on every shelf', () => {
    expect(pages[0]!.nodes[0]!.id).toBe('glycerin')
    const kinds = part({ around: 'glycerin' }).nodes.map(({ kind }) => kind)
    const order = ['ingredient', 'role', 'class', 'limit', 'ingredient'] as const
    const runs = kinds.filter((kind, n) => kind !== kinds[n - 1])
    expect(order.filter((kind) => runs.includes(kind))).toEqual([...runs])
  })
  test('a node that is no part of it is nothing to go on after', () => {
    expect(graphAround(realWorld(), { ...query, after: 'no-such-thing' })).toBeNull()
  })
})

describe('evidence', () => {
  test('stands on every edge that a record or an entry states', () => {
    const { edges } = part({ around: 'sodium-benzoate' })
    const bare = edges.filter(({ relation, source }) => source === undefined && !/broader|confused/.test(relation))
    expect(bare).toEqual([])
    expect(edges.find(({ relation }) => relation === 'limited-by')).toMatchObject({ kind: 'law', access: 'read' })
  })
  test('of a derived edge is the weakest of the claims it follows from', () => {
    const { edges } = part({ around: 'xanthan-gum', relations: ['holds-with'], limit: 200 })
    const ACCESSES = ['read', 'secondary', 'memory', 'common-practice']
    const byId = new Map(
      realWorld().subjects.flatMap(({ facts }) => [...facts.values()].flat().map((claim) => [claim.id, claim])),
    )
    const claimOf = (id: string) => byId.get(id)
    const own = usedClaim(realWorld().find('xanthan-gum')!, 'ph_stability')!
    for (const { claims, access, source, kind, ph } of edges) {
      if (ph !== undefined) expect(claims).toContain(own.id)
      const known = claims!.flatMap((id) => claimOf(id) ?? [])
      const weakest = Math.max(...known.map((claim) => ACCESSES.indexOf(claim.access)))
      expect(kind).toBe('derived')
      expect(ACCESSES.indexOf(access!)).toBeGreaterThanOrEqual(weakest)
      for (const claim of known) expect(source).toContain(claim.source)
    }
  })
})

test('holds-with comes only when asked for', () => {
  expect(part({ around: 'xanthan-gum', steps: 2 }).edges.some(({ relation }) => relation === 'holds-with')).toBe(false)
})
