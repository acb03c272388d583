import { teach } from '#web/text/teach.ts'
import { csvOf } from './teach-csv.ts'
import type { Cell } from './teach-csv.ts'
import { letterOf } from './teach-letters.ts'
import { rightShare } from './teach-marks.ts'
import type { GroupTally, Marked, StudentMarks, Tally } from './teach-marks.ts'

const T = teach.results

/** A table as it goes into a file. */
export interface Table {
  heads: string[]
  rows: Cell[][]
}

export const toCsv = ({ heads, rows }: Table): string => csvOf(heads, rows)

/** Share as a number with one decimal; nothing where there is none. */
function sharePercent(tally: Pick<Tally, 'right' | 'of'>): number | undefined {
  const share = rightShare(tally)
  return share === null ? undefined : Number(share.toFixed(1))
}

const { student, right, of, share, open, question, key, group, number } = T.columns

/** A row for each student: right, of how many, share, then the letters. */
export const studentRows = (students: readonly StudentMarks[], questions: readonly Marked[]): Table => ({
  heads: [student, right, of, share, ...questions.map((_, at) => T.csvQuestion(at + 1))],
  rows: students.map((one) => [
    one.name,
    ...(one.marks === null ? [undefined, undefined, undefined] : [one.right, one.of, sharePercent(one)]),
    ...questions.map((_, at) => (one.marks?.[at] === 'open' ? T.csvOpen : one.letters[at])),
  ]),
})

/** A row for each question: what was asked, its key, and how it went. */
export const questionRows = (
  questions: readonly Marked[],
  tallies: readonly Tally[],
  labelOf: (group: string) => string,
): Table => ({
  heads: [number, question, group, key, right, of, open, share],
  rows: questions.map((one, at) => {
    const tally = tallies[at] ?? { right: 0, open: 0, of: 0 }
    const letter = one.key === null ? T.notKnown : letterOf(one.key)
    return [at + 1, one.question, labelOf(one.group), letter, tally.right, tally.of, tally.open, sharePercent(tally)]
  }),
})

/** A row for each role or kind, in the order given. */
export const groupRows = (groups: readonly GroupTally[], labelOf: (group: string) => string): Table => ({
  heads: [group, right, of, open, share],
  rows: groups.map((one) => [labelOf(one.group), one.right, one.of, one.open, sharePercent(one)]),
})

/** Rows of progress files: how many questions each student answered, and how many right the last time. */
export const progressRows = (all: readonly { name: string; last: readonly { right: boolean }[] }[]): Table => ({
  heads: [student, T.lastRight, T.answered, share],
  rows: all.map(({ name, last }) => {
    const tally = { right: last.filter((one) => one.right).length, of: last.length }
    return [name, tally.right, tally.of, sharePercent(tally)]
  }),
})
