import { describe, expect, test } from 'vitest'
import { USUAL } from '#web/explorer/relations.ts'
import { joinedIn } from '#web/explorer/statements.ts'
import { AT_FIRST, buildTree, groupsIn, nodesIn } from '#web/explorer/tree.ts'
import type { NodeItem, TreeAsk } from '#web/explorer/tree.ts'
import { makeNode, makePart, partsOf } from './parts.ts'

const glycerin = makePart('glycerin', [
  'glycerin plays role:humectant',
  'sorbitol stands-in-for glycerin',
  'glycerin clashes-with borax',
  'borax clashes-with glycerin',
])
const humectant = makePart('role:humectant', ['glycerin plays role:humectant', 'sorbitol plays role:humectant'])

const tree = (change: Partial<TreeAsk> = {}): NodeItem =>
  buildTree({
    ...{ root: 'glycerin', way: [], parts: partsOf(glycerin, humectant), open: ['glycerin'], loading: [] },
    ...{ relations: USUAL, full: [] },
    ...change,
  })
const ids = (root: NodeItem): string[] => nodesIn(root).map(({ node }) => node.id)
const groups = (root: NodeItem): string[] => groupsIn(root).map(({ key }) => key)

describe('the tree', () => {
  test('groups neighbours by relation, each read from the node above', () => {
    expect(groups(tree())).toEqual([
      'glycerin>plays>out',
      'glycerin>stands-in-for>in',
      'glycerin>clashes-with>out', // stated from both ends: one group, one member
    ])
    expect(ids(tree())).toEqual(['glycerin', 'role:humectant', 'sorbitol', 'borax'])
    expect(groupsIn(tree())[2]!.members[0]!.edges).toHaveLength(2)
  })
  test('shows only relations that are on', () => {
    expect(groups(tree({ relations: ['plays'] }))).toEqual(['glycerin>plays>out'])
    expect(groups(tree({ relations: [] }))).toEqual([])
  })
  test('names a node again where it is joined a second time, so that no edge is lost', () => {
    const opened = tree({ open: ['glycerin', 'role:humectant'] })
    expect(ids(opened)).toEqual(['glycerin', 'role:humectant', 'sorbitol', 'borax'])
    const players = groupsIn(opened).find(({ key }) => key === 'role:humectant>plays>in')!.members
    expect(players.map(({ node, isAgain }) => [node.id, isAgain])).toEqual([
      ['glycerin', true],
      ['sorbitol', true],
    ])
    const keys = joinedIn(opened).map(({ key }) => key)
    expect(new Set(keys).size).toBe(keys.length)
    const edges = joinedIn(opened).flatMap(({ to }) => to.edges.map(({ id }) => id))
    expect(new Set(edges)).toEqual(new Set([...glycerin.edges, ...humectant.edges].map(({ id }) => id)))
  })
  test('says what is open and what is on its way', () => {
    const waiting = tree({ parts: partsOf(glycerin), open: ['glycerin', 'sorbitol'], loading: ['sorbitol'] })
    const sorbitol = nodesIn(waiting).find(({ node }) => node.id === 'sorbitol')!
    expect(sorbitol).toMatchObject({ isOpen: true, isLoading: true, groups: [] })
  })
  test('stands under the record where an alias was asked for', () => {
    expect(tree({ root: 'glycerol', parts: new Map([['glycerol', glycerin]]), open: ['glycerol'] }).node.id).toBe(
      'glycerin',
    )
  })
})

describe('a long group', () => {
  const many = makePart(
    'role:solvent',
    Array.from({ length: 40 }, (_, n) => `thing-${n} plays role:solvent`),
  )
  const ask = { root: 'role:solvent', parts: partsOf(many), open: ['role:solvent'] }
  test('is cut, tells how many are left, and keeps the order of the answer', () => {
    const [group] = groupsIn(tree(ask))
    expect(group!.members.map(({ node }) => node.id)).toEqual(Array.from({ length: AT_FIRST }, (_, n) => `thing-${n}`))
    expect(group!.more).toBe(40 - AT_FIRST)
  })
  test('is shown to its end when that is asked for', () => {
    const [group] = groupsIn(tree({ ...ask, full: ['role:solvent>plays>in'] }))
    expect([group!.members.length, group!.more]).toEqual([40, 0])
  })
  test('is never cut for the sake of one', () => {
    const nine = makePart(
      'role:x',
      Array.from({ length: AT_FIRST + 1 }, (_, n) => `thing-${n} plays role:x`),
    )
    expect(groupsIn(tree({ root: 'role:x', parts: partsOf(nine), open: ['role:x'] }))[0]!.more).toBe(0)
  })
})

describe('the way of a swap', () => {
  const way = [
    { from: 'glycerin', relation: 'plays', to: 'role:humectant' },
    { from: 'role:humectant', relation: 'played-by', to: 'sorbitol' },
    { from: 'sorbitol', relation: 'stands-in-for', to: 'glycerin' },
  ]
  test('stands one behind the other, with what the answers say of each step', () => {
    const root = tree({ way, open: [] })
    expect(groups(root)).toEqual(['glycerin>plays>out', 'role:humectant>plays>in', 'sorbitol>stands-in-for>out'])
    expect(nodesIn(root).every(({ isOnWay }) => isOnWay)).toBe(true)
    expect(groupsIn(root)[2]!.members[0]).toMatchObject({ isAgain: true, node: { id: 'glycerin' } })
  })
  test('stays in its order when its nodes are opened', () => {
    const root = tree({ way, open: ['glycerin', 'role:humectant'] })
    const sorbitol = nodesIn(root).filter(({ node }) => node.id === 'sorbitol')
    expect(sorbitol).toHaveLength(1)
    expect(groupsIn(root).find(({ key }) => key === 'role:humectant>plays>in')!.members[0]).toBe(sorbitol[0])
  })
  test('is shown with relations off, and with nodes of which nothing is known yet', () => {
    const root = tree({ way, open: [], relations: [], parts: new Map() })
    expect(ids(root)).toEqual(['glycerin', 'role:humectant', 'sorbitol'])
    expect(nodesIn(root)[1]!.node).toEqual(makeNode('role:humectant', { label: 'humectant', links: 0 }))
  })
})
