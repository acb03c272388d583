import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { letterOf, readLetters, readPasted } from '#web/state/teach-letters.ts'

const FOUR = [4, 4, 2, 4]

describe('letters of a sheet', () => {
  test.each(['ABBD', 'abbd', ' A b, b; D ', 'a|b|b|d'])('case, spaces and commas do not count: %s', (typed) => {
    expect(readLetters(typed, FOUR)).toEqual({ taken: [0, 1, 1, 3] })
  })
  test.each(['A-BD', 'A_BD', 'A?BD', 'A–BD'])('a question left open is not an answer: %s', (typed) => {
    expect(readLetters(typed, FOUR)).toEqual({ taken: [0, null, 1, 3] })
  })
  test('nothing typed is nothing, not a row of wrong answers', () => {
    expect(readLetters('  ', FOUR)).toBeNull()
  })
  test('too few or too many are told', () => {
    expect(readLetters('AB', FOUR)).toEqual({ fault: { code: 'count', got: 2, expected: 4 } })
    expect(readLetters('ABABA', FOUR)).toEqual({ fault: { code: 'count', got: 5, expected: 4 } })
  })
  test('a choice that a question does not have is told with the question', () => {
    expect(readLetters('ABCD', FOUR)).toEqual({ fault: { code: 'letter', question: 3, got: 'C', last: 'B' } })
    expect(readLetters('A1BD', FOUR)).toEqual({ fault: { code: 'letter', question: 2, got: '1', last: 'D' } })
  })
  test('whatever was taken is read back from its letters', () => {
    const sheet = fc
      .array(fc.integer({ min: 2, max: 6 }), { minLength: 1, maxLength: 20 })
      .chain((choices) =>
        fc.tuple(fc.constant(choices), fc.tuple(...choices.map((n) => fc.option(fc.integer({ min: 0, max: n - 1 }))))),
      )
    fc.assert(
      fc.property(sheet, ([choices, taken]) => {
        const typed = taken.map((place) => (place === null ? '-' : letterOf(place))).join(' ')
        expect(readLetters(typed, choices)).toEqual({ taken })
      }),
    )
  })
})

describe('pasted lines', () => {
  test.each(['Ada\tA\tB\tB\tD', 'Ada;ABBD', 'Ada, a, b, b, d', 'Ada: ABBD', 'Ada ABBD', '"Ada",A,B,B,D'])(
    'name and letters are cut apart: %j',
    (line) => {
      const { students, faults } = readPasted(line, FOUR, [])
      expect(faults).toEqual([])
      expect(students.map(({ name, typed }) => [name, readLetters(typed, FOUR)])).toEqual([
        ['Ada', { taken: [0, 1, 1, 3] }],
      ])
    },
  )
  test('a name in quotes may hold a comma, a name without may hold a space', () => {
    const { students } = readPasted('"Ames, Ada",ABBD\nBo Berg ABBD', FOUR, [])
    expect(students.map(({ name }) => name)).toEqual(['Ames, Ada', 'Bo Berg'])
  })
  test('an empty cell is a question left open', () => {
    expect(readPasted('Ada\tA\t\tB\tD', FOUR, []).students).toEqual([{ name: 'Ada', typed: 'A-BD' }])
  })
  test('each line at fault is named and kept as it was; the others are taken', () => {
    const pasted = readPasted('Ada;ABBD\n\nBo;AB\n;ABBD\nAda;ABBD\nCy;AXBD\nDi;\nEd;ABBD', FOUR, ['Ed'])
    expect(pasted.students.map(({ name }) => name)).toEqual(['Ada'])
    expect(pasted.faults).toEqual([
      { line: 3, words: 'Bo;AB', fault: { code: 'count', got: 2, expected: 4 } },
      { line: 4, words: ';ABBD', fault: { code: 'no-name' } },
      { line: 5, words: 'Ada;ABBD', fault: { code: 'twice', name: 'Ada' } },
      { line: 6, words: 'Cy;AXBD', fault: { code: 'letter', question: 2, got: 'X', last: 'D' } },
      { line: 7, words: 'Di;', fault: { code: 'no-answers' } },
      { line: 8, words: 'Ed;ABBD', fault: { code: 'twice', name: 'Ed' } },
    ])
  })
  test('no line is lost: each is a student or a fault', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme-ascii' })), (lines) => {
        const { students, faults } = readPasted(lines.join('\n'), FOUR, [])
        expect(students.length + faults.length).toBe(lines.filter((line) => line.trim() !== '').length)
      }),
    )
  })
})
