import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { csvOf as csvOfServer } from '#engine/graph/csv.ts'
import type { LearnItem } from '#web/client/use-learn.ts'
import { EMPTY_PROGRESS, withAnswer } from '#web/state/review.ts'
import { csvOf } from '#web/state/teach-csv.ts'
import { byGroup, byQuestion, marksOf, progressByGroup, rightShare } from '#web/state/teach-marks.ts'
import type { Marked } from '#web/state/teach-marks.ts'
import { nameFromFile, readLastAnswers } from '#web/state/teach-progress.ts'
import { groupRows, questionRows, studentRows, toCsv } from '#web/state/teach-tables.ts'

const question = (key: number | null, group: string): Marked => ({ question: `Ask ${group}`, choices: 4, key, group })
const SHEET = [question(0, 'humectant'), question(1, 'thickener'), question(2, 'thickener'), question(null, 'what-if')]
const students = (...typed: string[]) => typed.map((one, at) => marksOf({ name: `S${at}`, typed: one }, SHEET))
const same = (group: string) => group

describe('marks', () => {
  test('right, wrong, open and not known are four things', () => {
    expect(students('AC-A')[0]).toEqual({
      name: 'S0',
      typed: 'AC-A',
      marks: ['right', 'wrong', 'open', 'not-known'],
      letters: ['A', 'C', '-', 'A'],
      fault: null,
      right: 1,
      of: 3,
    })
  })
  test('letters at fault give no marks', () => {
    expect(students('AC')[0]).toMatchObject({ marks: null, of: 0, fault: { code: 'count' } })
  })
  test('a question counts who handed in; one left open is not right', () => {
    expect(byQuestion(students('ABCA', 'A-CA', 'BB'), SHEET)).toEqual([
      { right: 2, open: 0, of: 2 },
      { right: 1, open: 1, of: 2 },
      { right: 2, open: 0, of: 2 },
      { right: 0, open: 0, of: 0 },
    ])
  })
  test('roles come hardest first, what could not be marked last, ties by name', () => {
    const marked = students('ABDA', 'A-DA')
    expect(byGroup(marked, SHEET).map(({ group, right, of }) => [group, right, of])).toEqual([
      ['thickener', 1, 4],
      ['humectant', 2, 2],
      ['what-if', 0, 0],
    ])
    expect(byGroup(students('BAAA'), SHEET).map(({ group }) => group)).toEqual(['humectant', 'thickener', 'what-if'])
  })
  test('a share of nothing is none, not 0', () => {
    expect(rightShare({ right: 0, of: 0 })).toBeNull()
    expect(rightShare({ right: 1, of: 4 })).toBe(25)
  })
})

describe('tables as files', () => {
  test('by student: blanks where there are no marks, a word where a question was left open', () => {
    expect(toCsv(studentRows(students('AC-A', 'AB'), SHEET)).split('\r\n')).toEqual([
      'Student,Right,of,"Right, %",question 1,question 2,question 3,question 4',
      'S0,1,3,33.3,A,C,open,A',
      'S1,,,,,,,',
      '',
    ])
  })
  test('by question and by role', () => {
    const marked = students('AC-A', 'ABCA')
    expect(questionRows(SHEET, byQuestion(marked, SHEET), same).rows).toEqual([
      [1, 'Ask humectant', 'humectant', 'A', 2, 2, 0, 100],
      [2, 'Ask thickener', 'thickener', 'B', 1, 2, 0, 50],
      [3, 'Ask thickener', 'thickener', 'C', 1, 2, 1, 50],
      [4, 'Ask what-if', 'what-if', 'not known', 0, 0, 0, undefined],
    ])
    expect(groupRows(byGroup(marked, SHEET), same).rows[0]).toEqual(['thickener', 2, 4, 1, 50])
  })
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '＝1'])('a name cannot run as a formula: %j', (name) => {
    const [, row = ''] = toCsv(studentRows([marksOf({ name, typed: '' }, [])], [])).split('\r\n')
    expect(row.replace(/^"/, '').startsWith("'")).toBe(true)
  })
  test('the writer is the same as that of the tables of data', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('=a', '"', 'a,b', '-\n'),
      fc.double(),
      fc.constant(undefined),
    )
    fc.assert(
      fc.property(fc.array(fc.string()), fc.array(fc.array(cell)), (heads, rows) => {
        expect(csvOf(heads, rows)).toBe(csvOfServer(heads, rows))
      }),
    )
  })
})

const item = (id: string, role?: string): LearnItem => ({
  id,
  ref: { kind: 'plays-role', seed: 1, ...(role !== undefined && { role }) },
  kind: 'plays-role',
  difficulty: 1,
  question: `Which is ${id}?`,
  choices: [{ id: 'a', text: 'A' }],
})

describe('progress files', () => {
  test('the last answer is read back, whatever came before it and however long between', () => {
    const history = fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 1, max: 60 * 24 * 90 })), {
      minLength: 1,
      maxLength: 12,
    })
    fc.assert(
      fc.property(history, (answers) => {
        let progress = EMPTY_PROGRESS
        let at_ms = Date.parse('2026-01-01T08:00:00Z')
        for (const [isRight, minutes] of answers) {
          at_ms += minutes * 60_000
          progress = withAnswer(progress, item('i'), isRight, new Date(at_ms))
        }
        const read = readLastAnswers(JSON.stringify(progress))
        expect(read).toEqual({
          last: [{ id: 'i', question: 'Which is i?', kind: 'plays-role', role: null, right: answers.at(-1)?.[0] }],
        })
      }),
    )
  })
  test.each([
    ['nonsense', 'json'],
    ['{"version":2,"items":{}}', 'not-progress'],
    ['[]', 'not-progress'],
    [JSON.stringify(EMPTY_PROGRESS), 'empty'],
  ])('%s is told as %s', (text, fault) => expect(readLastAnswers(text)).toEqual({ fault }))
  test('questions count under their role, else under their kind', () => {
    const now = new Date('2026-01-01T08:00:00Z')
    const one = withAnswer(withAnswer(EMPTY_PROGRESS, item('i', 'humectant'), true, now), item('j'), false, now)
    const read = readLastAnswers(JSON.stringify(one))
    const last = 'last' in read ? read.last : []
    expect(progressByGroup([{ name: 'Ada', last }])).toEqual([
      { group: 'plays-role', right: 0, open: 0, of: 1 },
      { group: 'humectant', right: 1, open: 0, of: 1 },
    ])
  })
  test('a student is called after the file, with a number where the name is taken', () => {
    expect(nameFromFile('ada.json', [])).toBe('ada')
    expect(nameFromFile('ada.json', ['ada', 'ada 2'])).toBe('ada 3')
  })
})
