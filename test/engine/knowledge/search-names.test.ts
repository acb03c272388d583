import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { buildLetterRuns } from '#engine/knowledge/letter-runs.ts'
import { beginningWith, shortestBeginningWith } from '#engine/knowledge/beginnings.ts'
import { searchNames } from '#engine/knowledge/search-names.ts'
import { realWorld } from '../../helpers.ts'

const ids = (typed: string, most = 5) => searchNames(realWorld().knowledge, typed, most).map(({ id }) => id)

describe('a pick list of names', () => {
  test('holds a whole name first, and what goes by it', () => {
    expect(ids('SQUALENE')[0]).toBe('squalene')
    expect(ids('xanthan')[0]).toBe('xanthan-gum')
    expect(ids('water')[0]).toBe('aqua')
  })
  test('goes on from a beginning, the shortest first', () => {
    const found = searchNames(realWorld().knowledge, 'magnesium ascorbyl ph', 3)
    expect(found[0]).toEqual({
      id: 'magnesium-ascorbyl-phosphate',
      name: 'magnesium ascorbyl phosphate',
      by: 'beginning',
    })
  })
  test('reads a mark that was typed as a mark of the name', () => {
    expect(ids('peg-7/')).toContain('peg-7-ppg-2-propylheptyl-ether')
    expect(ids('arginine/')).toContain('arginine-lysine-polypeptide')
  })
  test('takes the words in any order', () => {
    expect(ids('starch hydroxypropyl phosphate')[0]).toBe('hydroxypropyl-starch-phosphate')
  })
  test('takes a slip of the pen and a word written by ear', () => {
    expect(ids('stearmidopropyl dimethylamine')[0]).toBe('stearamidopropyl-dimethylamine')
    expect(ids('fenoksyethanol')[0]).toBe('phenoxyethanol')
  })
  test('is empty for signs and for what is like nothing', () => {
    expect(ids('??')).toEqual([])
    expect(ids('')).toEqual([])
    expect(ids('qqqqxxwwjj')).toEqual([])
  })
  test('names nothing twice and is never longer than asked', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.integer({ min: 1, max: 8 }), (typed, most) => {
        const found = ids(typed, most)
        expect(found.length).toBeLessThanOrEqual(most)
        expect(new Set(found).size).toBe(found.length)
      }),
      { numRuns: 100 },
    )
  })
})

describe('beginnings', () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom('a', 'b', 'c'), maxLength: 5 }), { maxLength: 30 })
  test('are those of a plain search, in order', () => {
    fc.assert(
      fc.property(words, fc.string({ unit: fc.constantFrom('a', 'b'), maxLength: 3 }), (list, text) => {
        const sorted = [...list].sort()
        const plain = sorted.filter((word) => word.startsWith(text))
        expect(beginningWith(sorted, text, 99)).toEqual(plain)
        const shortest = plain.map((word) => word.length).sort((a, b) => a - b)
        expect(shortestBeginningWith(sorted, text, 4).map((word) => word.length)).toEqual(shortest.slice(0, 4))
      }),
    )
  })
})

test('who shares every run of letters with a text is among those that share the most', () => {
  const text = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'd', 'e', '1'), minLength: 4, maxLength: 12 })
  fc.assert(
    fc.property(fc.uniqueArray(text, { minLength: 1, maxLength: 60 }), (texts) => {
      const runs = buildLetterRuns(texts)
      for (const [place, one] of texts.entries()) expect(runs.sharing(one, 5)).toContain(place)
    }),
  )
})
