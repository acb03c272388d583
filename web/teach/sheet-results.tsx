import { Failed, Loading } from '#web/parts/states.tsx'
import { withQuiz } from '#web/state/teach.ts'
import type { Quiz, Student, TeachClass } from '#web/state/teach.ts'
import { byGroup, byQuestion, marksOf } from '#web/state/teach-marks.ts'
import { groupRows, questionRows, studentRows, toCsv } from '#web/state/teach-tables.ts'
import type { Table } from '#web/state/teach-tables.ts'
import { teach } from '#web/text/teach.ts'
import { AnswersForm } from './answers-form.tsx'
import { classTitle } from './class-title.ts'
import { downloadCsv, fileWords } from './download.ts'
import { GroupTable } from './group-table.tsx'
import { QuestionTable } from './question-table.tsx'
import { StudentTable } from './student-table.tsx'
import type { ClassStore } from './use-classes.ts'
import { useGroupLabel } from './use-group-label.ts'
import { useMarkedQuiz } from './use-marked-quiz.ts'

const T = teach.results

interface Props {
  of: TeachClass
  quiz: Quiz
  change: ClassStore['changeNow']
}

/** The three tables as files. */
function Files({ name, tables }: { name: string; tables: Record<keyof typeof T.fileNames, Table> }) {
  const save = (what: keyof typeof T.fileNames) =>
    downloadCsv(T.file(fileWords(name), T.fileNames[what]), toCsv(tables[what]))
  return (
    <div className="row screen-only">
      <button type="button" onClick={() => save('students')}>
        {T.csvStudents}
      </button>
      <button type="button" onClick={() => save('questions')}>
        {T.csvQuestions}
      </button>
      <button type="button" onClick={() => save('groups')}>
        {T.csvGroups}
      </button>
    </div>
  )
}

/** Letters of a class against a sheet: by student, by question, by role. */
export function SheetResults({ of, quiz, change }: Props) {
  const { reply, key, changed, questions, items } = useMarkedQuiz(quiz, change)
  const labelOf = useGroupLabel()
  const setStudents = (how: (students: Student[]) => Student[]) =>
    change((now) => withQuiz(now, quiz.id, (one) => ({ ...one, students: how(one.students) })))
  if (reply.state === 'failed') return <Failed failure={reply} />
  if (reply.state !== 'ready') return <Loading>{teach.quiz.loading}</Loading>
  const students = quiz.students.map((student) => marksOf(student, questions))
  const tallies = byQuestion(students, questions)
  const groups = byGroup(students, questions)
  const tables = {
    students: studentRows(students, questions),
    questions: questionRows(questions, tallies, labelOf),
    groups: groupRows(groups, labelOf),
  }
  return (
    <>
      {changed.length > 0 && <p role="alert">{teach.quiz.changed(changed.map((at) => at + 1).join(', '))}</p>}
      {key.done < items.length && <p role="status">{T.waiting}</p>}
      {key.failed.includes(true) && (
        <button type="button" onClick={key.retry}>
          {teach.quiz.again}
        </button>
      )}
      <AnswersForm
        choices={questions.map(({ choices }) => choices)}
        names={quiz.students.map(({ name }) => name)}
        onAdd={(more) => setStudents((before) => [...before, ...more])}
      />
      <StudentTable students={students} setStudents={setStudents} />
      {students.length > 0 && (
        <>
          <QuestionTable questions={questions} tallies={tallies} labelOf={labelOf} />
          <GroupTable title={T.groups} groups={groups} labelOf={labelOf} hasOpen />
          <Files name={classTitle(of)} tables={tables} />
        </>
      )}
    </>
  )
}
