import { describe, expect, test } from 'vitest'
import { outlineRows, rowAfter, rowByLetters } from '#web/explorer/outline.ts'
import { USUAL } from '#web/explorer/relations.ts'
import { buildTree } from '#web/explorer/tree.ts'
import { makePart, partsOf } from './parts.ts'

const part = makePart('glycerin', [
  'glycerin plays role:humectant',
  'glycerin plays role:solvent',
  'sorbitol stands-in-for glycerin',
])
const root = buildTree({
  ...{ root: 'glycerin', way: [], parts: partsOf(part), open: ['glycerin'], loading: [], relations: USUAL, full: [] },
})
const rows = outlineRows(root, new Set())
const key = {
  plays: 'glycerin>plays>out',
  standIn: 'glycerin>stands-in-for>in',
}

describe('the outline', () => {
  test('lists node, relation, neighbours in reading order with their depth and place', () => {
    expect(rows.map((row) => [row.key, row.level, row.place, row.of])).toEqual([
      ['glycerin', 1, 1, 1],
      [key.plays, 2, 1, 2],
      ['role:humectant', 3, 1, 2],
      ['role:solvent', 3, 2, 2],
      [key.standIn, 2, 2, 2],
      ['sorbitol', 3, 1, 1],
    ])
  })
  test('hides what is below a folded relation', () => {
    const folded = outlineRows(root, new Set([key.plays]))
    expect(folded.map((row) => row.key)).toEqual(['glycerin', key.plays, key.standIn, 'sorbitol'])
    expect(folded[1]!.isUnfolded).toBe(false)
  })
  test('counts the row that shows the rest', () => {
    const many = makePart(
      'role:x',
      Array.from({ length: 20 }, (_, n) => `thing-${n} plays role:x`),
    )
    const cut = outlineRows(
      buildTree({
        ...{ root: 'role:x', way: [], parts: partsOf(many), open: ['role:x'], loading: [], relations: USUAL, full: [] },
      }),
      new Set(),
    )
    expect(cut.at(-1)).toMatchObject({ kind: 'more', key: 'role:x>plays>in>more', place: 9, of: 9 })
  })
})

describe('keys', () => {
  test.each([
    ['glycerin', 'down', key.plays],
    ['glycerin', 'up', 'glycerin'],
    ['sorbitol', 'down', 'sorbitol'],
    ['sorbitol', 'parent', key.standIn],
    [key.standIn, 'parent', 'glycerin'],
    ['glycerin', 'child', key.plays],
    ['sorbitol', 'child', 'sorbitol'],
    ['role:solvent', 'first', 'glycerin'],
    ['role:solvent', 'last', 'sorbitol'],
    ['gone', 'down', 'glycerin'],
  ] as const)('from %s %s to %s', (from, move, to) => {
    expect(rowAfter(rows, from, move)).toBe(to)
  })
  test('letters find the next name that begins so, round the end', () => {
    const nameOf = (row: { key: string }) => row.key
    expect(rowByLetters(rows, 'role:humectant', 'r', nameOf)).toBe('role:solvent')
    expect(rowByLetters(rows, 'role:solvent', 'r', nameOf)).toBe('role:humectant')
    expect(rowByLetters(rows, 'role:humectant', 'role:s', nameOf)).toBe('role:solvent')
    expect(rowByLetters(rows, 'sorbitol', 'z', nameOf)).toBe('sorbitol')
  })
})
