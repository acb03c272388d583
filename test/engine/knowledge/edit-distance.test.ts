import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { editDistance, likeness } from '#engine/knowledge/edit-distance.ts'

/** The whole table, cell by cell, as the definition has it. */
function byDefinition(a: string, b: string): number {
  const table = Array.from({ length: a.length + 1 }, (_, i) => Array.from({ length: b.length + 1 }, (_, j) => i + j))
  const at = (i: number, j: number) => table[i]![j]!
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let cost = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, at(i - 2, j - 2) + 1)
      table[i]![j] = cost
    }
  }
  return at(a.length, b.length)
}

const FEW = fc.string({ unit: fc.constantFrom('a', 'b', 'c', ' '), maxLength: 40 })
const LONG = fc.string({ unit: fc.constantFrom('a', 'b', 'z', '7'), minLength: 28, maxLength: 80 })

describe('edits', () => {
  test('insertion, deletion, substitution and swap of neighbours count one each', () => {
    expect(editDistance('glycerin', 'glycerine', 3)).toBe(1)
    expect(editDistance('glycerin', 'glcerin', 3)).toBe(1)
    expect(editDistance('glycerin', 'glycarin', 3)).toBe(1)
    expect(editDistance('glycerin', 'glyecrin', 3)).toBe(1)
    expect(editDistance('squalane', 'squalene', 3)).toBe(1)
    expect(editDistance('', 'abc', 3)).toBe(3)
  })
  test.each([FEW, LONG])('are those of the definition, up to the limit', (text) => {
    fc.assert(
      fc.property(text, text, fc.integer({ min: 0, max: 30 }), (a, b, limit) => {
        expect(editDistance(a, b, limit)).toBe(Math.min(byDefinition(a, b), limit + 1))
      }),
      { numRuns: 2000 },
    )
  })
  test('a swap of neighbours is one edit at any place of a long name', () => {
    const name = 'sodiumcocoylhydrolyzedwheatproteinglutamatepotassiumlaurylsulfatexy'
    for (let at = 0; at + 1 < name.length; at++) {
      const typed = name.slice(0, at) + name[at + 1]! + name[at]! + name.slice(at + 2)
      expect(editDistance(typed, name, 3)).toBe(typed === name ? 0 : 1)
    }
  })
  test('a few slips in a long name are counted', () => {
    const slips = fc.array(fc.tuple(fc.nat(59), fc.constantFrom('', 'x', 'ax')), { maxLength: 4 })
    fc.assert(
      fc.property(LONG, slips, (name, changes) => {
        let typed = name
        for (const [at, put] of changes) typed = typed.slice(0, at) + put + typed.slice(at + 1)
        expect(editDistance(typed, name, 9)).toBe(Math.min(byDefinition(typed, name), 10))
      }),
      { numRuns: 500 },
    )
  })
})

test('likeness is one for equal texts and nought where less than half is shared', () => {
  expect(likeness('aqua', 'aqua')).toBe(1)
  expect(likeness('', '')).toBe(1)
  expect(likeness('glycerin', 'glycerine')).toBeCloseTo(1 - 1 / 9)
  expect(likeness('aqua', 'zinc')).toBe(0)
})
