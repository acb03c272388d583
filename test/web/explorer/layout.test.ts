import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { indented, ROW_PX, twoSided } from '#web/explorer/layout.ts'
import type { Branch, Layout } from '#web/explorer/layout.ts'
import { USUAL } from '#web/explorer/relations.ts'
import { sceneOfTree } from '#web/explorer/scene-of-tree.ts'
import { nodeToThe } from '#web/explorer/scene.ts'
import { buildTree } from '#web/explorer/tree.ts'
import { makeNode, makePart, partsOf } from './parts.ts'

type Bare = Omit<Branch, 'key'>

/** Any tree of so many levels, keys by place. */
const bare = (levels: number): fc.Arbitrary<Bare> =>
  fc.record({
    width_px: fc.integer({ min: 20, max: 240 }),
    branches: levels === 0 ? fc.constant([]) : fc.array(bare(levels - 1) as fc.Arbitrary<Branch>, { maxLength: 4 }),
  })
const branches: fc.Arbitrary<Branch> = bare(4).map((one) => named(one, '0'))

const named = (one: Bare, key: string): Branch => ({
  ...one,
  key,
  branches: one.branches.map((below, at) => named(below, `${key}.${at}`)),
})
const all = (branch: Branch): Branch[] => [branch, ...branch.branches.flatMap(all)]

/** Pairs of labels that cover one another: in one row, and nearer than the first is wide. */
function covered({ places }: Layout, root: Branch): string[] {
  const marks = all(root).map(({ key, width_px }) => ({ key, width_px, ...places.get(key)! }))
  const spans = marks.map(({ key, x, y, side, width_px }) =>
    side === 'left'
      ? { key, y, from: x - width_px, to: x }
      : { key, y, from: x, to: x + (side === 'middle' ? 0 : width_px) },
  )
  return spans.flatMap((a, at) =>
    spans
      .slice(at + 1)
      .filter((b) => Math.abs(a.y - b.y) < ROW_PX / 2 - 0.01 && a.from < b.to - 0.01 && b.from < a.to - 0.01)
      .map((b) => `${a.key} ${b.key}`),
  )
}

describe.each([
  ['two halves', twoSided],
  ['one thing a row', indented],
] as const)('a drawing in %s', (_name, layout) => {
  test('has a place for everything, and no label on another', () => {
    fc.assert(
      fc.property(branches, (root) => {
        const made = layout(root)
        expect([...made.places.keys()].sort()).toEqual(
          all(root)
            .map(({ key }) => key)
            .sort(),
        )
        expect(covered(made, root)).toEqual([])
      }),
    )
  })
  test('is the same each time', () => {
    fc.assert(
      fc.property(branches, (root) => {
        expect(layout(structuredClone(root))).toEqual(layout(root))
      }),
    )
  })
})

test('both halves are about as high', () => {
  const leaf = (key: string): Branch => ({ key, width_px: 50, branches: [] })
  const group = (key: string, n: number): Branch => ({
    ...leaf(key),
    branches: Array.from({ length: n }, (_, at) => leaf(`${key}${at}`)),
  })
  const { places } = twoSided({ ...leaf('root'), branches: [group('a', 5), group('b', 1), group('c', 7)] })
  expect(['a', 'b', 'c'].map((key) => places.get(key)!.side)).toEqual(['right', 'right', 'left'])
})

describe('a scene', () => {
  const part = makePart(
    'glycerin',
    ['glycerin plays role:humectant', 'glycerin clashes-with borax', 'sorbitol stands-in-for glycerin'],
    [makeNode('borax', { windows: { ph_stability: { min: 8 } } })],
  )
  const root = buildTree({
    ...{ root: 'glycerin', way: [], parts: partsOf(part), open: ['glycerin'], loading: [], relations: USUAL, full: [] },
  })
  test.each([true, false])(
    'shows every node once, its kind as form, and every line between marks (narrow: %s)',
    (isNarrow) => {
      const { nodes, edges } = sceneOfTree(root, { ph: 5, heat_c: null }, isNarrow)
      const keys = nodes.map(({ key }) => key)
      expect(new Set(keys).size).toBe(keys.length)
      expect(edges.every(({ from, to }) => keys.includes(from) && keys.includes(to))).toBe(true)
      const shapes = Object.fromEntries(nodes.map(({ key, shape }) => [key, shape]))
      expect(shapes).toMatchObject({ glycerin: 'ingredient', 'role:humectant': 'role', borax: 'ingredient' })
    },
  )
  test('tells what fails from what is not known', () => {
    const { nodes } = sceneOfTree(root, { ph: 5, heat_c: null }, false)
    const holding = Object.fromEntries(nodes.map((node) => [node.key, node.holding]))
    expect(holding).toMatchObject({ borax: 'fails', sorbitol: 'unknown', 'role:humectant': 'none' })
  })
})

describe('arrow keys', () => {
  const points = [
    { key: 'a', x: 0, y: 0 },
    { key: 'b', x: 100, y: 5 },
    { key: 'c', x: 60, y: 90 },
    { key: 'd', x: -50, y: 0 },
  ]
  test('go to what lies nearest that way', () => {
    expect(nodeToThe('right', points[0]!, points)).toBe('b')
    expect(nodeToThe('down', points[0]!, points)).toBe('c') // b lies a little lower too, but far to the side
    expect(nodeToThe('left', points[0]!, points)).toBe('d')
    expect(nodeToThe('up', points[0]!, points)).toBeNull()
  })
})
