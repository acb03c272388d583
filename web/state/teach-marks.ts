import { letterOf, readLetters } from './teach-letters.ts'
import type { LettersFault } from './teach-letters.ts'
import type { LastAnswer, Student, StudentProgress } from './teach.ts'

/** A question to mark against; `key` is null where it is not known or the sheet on paper was another. */
export interface Marked {
  question: string
  choices: number
  key: number | null
  /** role or kind of question under which it counts */
  group: string
}

export type Mark = 'right' | 'wrong' | 'open' | 'not-known'

export interface StudentMarks {
  name: string
  typed: string
  /** null: nothing typed yet, or at fault */
  marks: Mark[] | null
  letters: string[]
  fault: LettersFault | null
  right: number
  /** how many questions could be marked */
  of: number
}

function markOf(taken: number | null, key: number | null): Mark {
  if (key === null) return 'not-known'
  if (taken === null) return 'open'
  return taken === key ? 'right' : 'wrong'
}

/** The marks of one student; a question left open counts among the questions and not among the right ones. */
export function marksOf({ name, typed }: Student, questions: readonly Marked[]): StudentMarks {
  const none = { name, typed, marks: null, letters: [], right: 0, of: 0 }
  const read = readLetters(
    typed,
    questions.map(({ choices }) => choices),
  )
  if (read === null) return { ...none, fault: null }
  if ('fault' in read) return { ...none, fault: read.fault }
  const marks = read.taken.map((taken, at) => markOf(taken, questions[at]?.key ?? null))
  return {
    name,
    typed,
    marks,
    letters: read.taken.map((taken) => (taken === null ? '-' : letterOf(taken))),
    fault: null,
    right: marks.filter((mark) => mark === 'right').length,
    of: marks.filter((mark) => mark !== 'not-known').length,
  }
}

export interface Tally {
  right: number
  open: number
  /** answers that could be marked */
  of: number
}

const tallyOf = (marks: readonly Mark[]): Tally => ({
  right: marks.filter((mark) => mark === 'right').length,
  open: marks.filter((mark) => mark === 'open').length,
  of: marks.filter((mark) => mark !== 'not-known').length,
})

/** Share of right answers [%]; null where there is none to share. */
export const rightShare = ({ right, of }: Pick<Tally, 'right' | 'of'>): number | null =>
  of === 0 ? null : (right / of) * 100

/** How each question went in the whole class. */
export const byQuestion = (students: readonly StudentMarks[], questions: readonly Marked[]): Tally[] =>
  questions.map((_, at) => tallyOf(students.flatMap(({ marks }) => marks?.[at] ?? [])))

export interface GroupTally extends Tally {
  group: string
}

/** Hardest first; what nobody answered comes last; ties by name. */
const byHardness = (a: GroupTally, b: GroupTally): number =>
  (rightShare(a) ?? Infinity) - (rightShare(b) ?? Infinity) || (a.group < b.group ? -1 : 1)

const grouped = (marks: readonly { group: string; mark: Mark }[]): GroupTally[] =>
  [...new Set(marks.map(({ group }) => group))]
    .map((group) => ({ group, ...tallyOf(marks.filter((one) => one.group === group).map(({ mark }) => mark)) }))
    .sort(byHardness)

/** How each role or kind of question went, the hardest first. */
export const byGroup = (students: readonly StudentMarks[], questions: readonly Marked[]): GroupTally[] =>
  grouped(
    questions.flatMap(({ group }, at) =>
      students.flatMap(({ marks }) => (marks?.[at] === undefined ? [] : [{ group, mark: marks[at] }])),
    ),
  )

const lastMark = ({ right }: LastAnswer): Mark => (right ? 'right' : 'wrong')

/** How the questions of progress files went, by role where one was asked for, else by kind. */
export const progressByGroup = (all: readonly StudentProgress[]): GroupTally[] =>
  grouped(all.flatMap(({ last }) => last.map((one) => ({ group: one.role ?? one.kind, mark: lastMark(one) }))))

/** How each question of progress files went; the group is its id. */
export const progressByQuestion = (all: readonly StudentProgress[]): GroupTally[] =>
  grouped(all.flatMap(({ last }) => last.map((one) => ({ group: one.id, mark: lastMark(one) }))))
