import { useId, useState } from 'react'
import { announce } from '#web/parts/announcer.tsx'
import { focusSoon } from '#web/parts/focus-soon.ts'
import type { Student } from '#web/state/teach.ts'
import type { StudentMarks } from '#web/state/teach-marks.ts'
import { teach } from '#web/text/teach.ts'
import { faultWords } from './fault-words.ts'
import { ShareCells } from './share-cell.tsx'

const T = teach.results

interface RowProps {
  student: StudentMarks
  onTyped: (typed: string) => void
  onRemove: () => void
}

function Row({ student, onTyped, onRemove }: RowProps) {
  const id = useId()
  const { name, typed, fault } = student
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <input
          className="teach-typed screen-only"
          aria-label={T.lettersOf(name)}
          value={typed}
          maxLength={200}
          spellCheck={false}
          autoComplete="off"
          aria-invalid={fault ? true : undefined}
          aria-describedby={fault ? id : undefined}
          onChange={({ target }) => onTyped(target.value)}
        />
        {fault && (
          <small id={id} className="bad">
            {faultWords(fault)}
          </small>
        )}
        <span className="print-only">{typed}</span>
      </td>
      <ShareCells tally={student} />
      <td className="screen-only">
        <button type="button" className="quiet" aria-label={T.removeOf(name)} onClick={onRemove}>
          {T.remove}
        </button>
      </td>
    </tr>
  )
}

interface Props {
  students: readonly StudentMarks[]
  setStudents: (how: (students: Student[]) => Student[]) => void
}

/** A row for each student; letters can be put right where they stand. */
export function StudentTable({ students, setStudents }: Props) {
  const [removed, setRemoved] = useState<Student | null>(null)
  const remove = (at: number) => {
    const one = students[at]
    if (!one) return
    setStudents((before) => before.filter((_, place) => place !== at))
    setRemoved({ name: one.name, typed: one.typed })
    announce(T.removed(one.name))
    focusSoon('.teach-put-back')
  }
  const putBack = () => {
    if (removed) setStudents((before) => [...before, removed])
    setRemoved(null)
    focusSoon('.teach-typed')
  }
  return (
    <section className="card teach-result">
      {students.length === 0 ? (
        <p>{T.empty}</p>
      ) : (
        <table className="sheet-table teach-table">
          <caption>{T.students}</caption>
          <thead>
            <tr>
              <th scope="col">{T.columns.student}</th>
              <th scope="col">{T.columns.letters}</th>
              <th scope="col">{T.columns.right}</th>
              <th scope="col">{T.columns.share}</th>
              <td className="screen-only" />
            </tr>
          </thead>
          <tbody>
            {students.map((student, at) => (
              <Row
                key={at}
                student={student}
                onTyped={(typed) =>
                  setStudents((before) => before.map((one, place) => (place === at ? { ...one, typed } : one)))
                }
                onRemove={() => remove(at)}
              />
            ))}
          </tbody>
        </table>
      )}
      {removed && (
        <p className="screen-only">
          {T.removed(removed.name)}{' '}
          <button type="button" className="teach-put-back" onClick={putBack}>
            {T.putBack}
          </button>
        </p>
      )}
    </section>
  )
}
