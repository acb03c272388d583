import { describe, expect, test } from 'vitest'
import { edgeHeld, nodeHeld, together } from '#web/explorer/holds.ts'
import { makeEdge, makeNode } from './parts.ts'

const NOTHING = { ph: null, heat_c: null }
const at = (ph: number | null, heat_c: number | null = null) => ({ ph, heat_c })
const thing = makeNode('thing', { windows: { ph_stability: { min: 3, max: 7 }, heat_max_c: 60 } })

describe('an ingredient', () => {
  test('holds inside its windows, ends included, and fails outside', () => {
    expect([3, 5, 7].map((ph) => nodeHeld(thing, at(ph)).state)).toEqual(['holds', 'holds', 'holds'])
    expect(nodeHeld(thing, at(7.1))).toEqual({ state: 'fails', why: ['keeps-not'] })
    expect(nodeHeld(thing, at(null, 60)).state).toBe('holds')
    expect(nodeHeld(thing, at(5, 61))).toEqual({ state: 'fails', why: ['bears-not'] })
  })
  test('of which no window is on record is unknown, never holding', () => {
    expect(nodeHeld(makeNode('thing'), at(5, 40))).toEqual({ state: 'unknown', why: ['ph-unknown', 'heat-unknown'] })
    const worksOnly = makeNode('thing', { windows: { ph_effective: { max: 5 } } })
    expect(nodeHeld(worksOnly, at(4)).state).toBe('unknown')
  })
  test('fails where it keeps but does not work, even when something else is unknown', () => {
    const both = makeNode('thing', { windows: { ph_stability: { min: 2, max: 9 }, ph_effective: { max: 5 } } })
    expect(nodeHeld(both, at(6, 40))).toEqual({ state: 'fails', why: ['works-not'] })
  })
  test('is not judged when nothing is asked', () => {
    expect(nodeHeld(thing, NOTHING).state).toBe('none')
  })
})

test('a role, a kind and a law have no window of their own', () => {
  for (const id of ['role:acid', 'class:ester', 'limit:x']) expect(nodeHeld(makeNode(id), at(5)).state).toBe('none')
})

describe('an edge that says where both hold', () => {
  const edge = makeEdge('a holds-with b', { ph: { min: 4, max: 6 }, heat_c: null })
  test('holds inside the common window, fails outside or where there is none', () => {
    expect(edgeHeld(edge, at(5)).state).toBe('holds')
    expect(edgeHeld(edge, at(7)).state).toBe('fails')
    expect(edgeHeld(edge, at(null, 40))).toEqual({ state: 'fails', why: ['never-meet'] })
  })
  test('is unknown where an end states no window', () => {
    expect(edgeHeld(makeEdge('a holds-with b'), at(5)).state).toBe('unknown')
  })
  test('other relations have no window', () => {
    expect(edgeHeld(makeEdge('a plays role:b'), at(5)).state).toBe('none')
  })
})

test('two together are no better than the worse', () => {
  const [holds, unknown, fails] = (['holds', 'unknown', 'fails'] as const).map((state) => ({ state, why: [] }))
  expect(together(holds!, unknown!).state).toBe('unknown')
  expect(together(fails!, unknown!).state).toBe('fails')
  expect(together({ state: 'none', why: [] }, holds!).state).toBe('holds')
})
