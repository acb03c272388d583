import { useState } from 'react'
import type { ChangeEvent } from 'react'
import { announce } from '#web/parts/announcer.tsx'
import { focusSoon } from '#web/parts/focus-soon.ts'
import type { StudentProgress, TeachClass } from '#web/state/teach.ts'
import { progressByGroup, progressByQuestion } from '#web/state/teach-marks.ts'
import { nameFromFile, readLastAnswers } from '#web/state/teach-progress.ts'
import { groupRows, progressRows, toCsv } from '#web/state/teach-tables.ts'
import { teach } from '#web/text/teach.ts'
import { classTitle } from './class-title.ts'
import { downloadCsv, fileWords } from './download.ts'
import { GroupTable } from './group-table.tsx'
import { ShareCells } from './share-cell.tsx'
import type { ClassStore } from './use-classes.ts'
import { useGroupLabel } from './use-group-label.ts'

const T = teach.results

interface Props {
  of: TeachClass
  change: ClassStore['changeNow']
}

function LoadFiles({ of, change }: Props) {
  const [said, setSaid] = useState<{ took: number; faults: string[] } | null>(null)
  const load = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const files = await Promise.all([...(target.files ?? [])].map(async (one) => [one.name, await one.text()] as const))
    target.value = ''
    const taken: StudentProgress[] = []
    const faults: string[] = []
    for (const [file, text] of files) {
      const read = readLastAnswers(text)
      const names = [...of.progress, ...taken].map(({ name }) => name)
      if ('fault' in read) faults.push(T.progressFault(file, read.fault))
      else taken.push({ name: nameFromFile(file, names), last: read.last })
    }
    if (taken.length > 0) change((now) => ({ ...now, progress: [...now.progress, ...taken] }))
    setSaid({ took: taken.length, faults })
  }
  return (
    <section className="card screen-only" aria-label={T.froms.progress}>
      <p className="remark">
        {T.progressHint} {T.hint}
      </p>
      <label className="field">
        <span>{T.progressLoad}</span>
        <input type="file" multiple accept="application/json,.json" onChange={(event) => void load(event)} />
      </label>
      <div role="status">
        {said !== null && said.took > 0 && <p>{T.progressTook(said.took)}</p>}
        {said !== null && said.faults.length > 0 && (
          <>
            <p>{T.progressNot}</p>
            <ul>
              {said.faults.map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </section>
  )
}

const tallyOf = ({ last }: StudentProgress) => ({ right: last.filter(({ right }) => right).length, of: last.length })

interface FileRowProps {
  one: StudentProgress
  onName: (name: string) => void
  onRemove: () => void
}

function FileRow({ one, onName, onRemove }: FileRowProps) {
  return (
    <tr>
      <td>
        <input
          className="screen-only"
          aria-label={T.nameOf(one.name)}
          value={one.name}
          maxLength={100}
          onChange={({ target }) => onName(target.value)}
        />
        <span className="print-only">{one.name}</span>
      </td>
      <ShareCells tally={tallyOf(one)} />
      <td className="screen-only">
        <button type="button" className="quiet" aria-label={T.removeOf(one.name)} onClick={onRemove}>
          {T.remove}
        </button>
      </td>
    </tr>
  )
}

/** Changes the files of a class; a removed one can be put back. */
function useFiles(change: Props['change']) {
  const [removed, setRemoved] = useState<StudentProgress | null>(null)
  const set = (how: (before: StudentProgress[]) => StudentProgress[]) =>
    change((now) => ({ ...now, progress: how(now.progress) }))
  const rename = (at: number, name: string) =>
    set((before) => before.map((one, place) => (place === at ? { ...one, name } : one)))
  const remove = (at: number, one: StudentProgress) => {
    set((before) => before.filter((_, place) => place !== at))
    setRemoved(one)
    announce(T.removed(one.name))
    focusSoon('.teach-put-back')
  }
  const putBack = (one: StudentProgress) => {
    set((before) => [...before, one])
    setRemoved(null)
  }
  return { removed, rename, remove, putBack }
}

/** A row for each student's file; the name can be put right. */
function StudentFiles({ of, change }: Props) {
  const { removed, rename, remove, putBack } = useFiles(change)
  return (
    <section className="card teach-result">
      {of.progress.length === 0 ? (
        <p>{T.empty}</p>
      ) : (
        <table className="sheet-table teach-table">
          <caption>{T.students}</caption>
          <thead>
            <tr>
              <th scope="col">{T.columns.student}</th>
              <th scope="col">{T.lastRight}</th>
              <th scope="col">{T.columns.share}</th>
              <td className="screen-only" />
            </tr>
          </thead>
          <tbody>
            {of.progress.map((one, at) => (
              <FileRow key={at} one={one} onName={(name) => rename(at, name)} onRemove={() => remove(at, one)} />
            ))}
          </tbody>
        </table>
      )}
      {removed && (
        <p className="screen-only">
          {T.removed(removed.name)}{' '}
          <button type="button" className="teach-put-back" onClick={() => putBack(removed)}>
            {T.putBack}
          </button>
        </p>
      )}
    </section>
  )
}

/** How the questions of progress files went: by student, by role or kind, by question. */
export function ProgressResults(props: Props) {
  const { of } = props
  const labelOf = useGroupLabel()
  const questions = new Map(of.progress.flatMap(({ last }) => last.map(({ id, question }) => [id, question] as const)))
  const questionOf = (id: string) => questions.get(id) ?? id
  const groups = progressByGroup(of.progress)
  const name = fileWords(classTitle(of))
  const { fileNames, columns } = T
  const save = (what: keyof typeof fileNames, text: string) => downloadCsv(T.file(name, fileNames[what]), text)
  const byId = progressByQuestion(of.progress)
  const questionCsv = () => {
    const { heads, rows } = groupRows(byId, questionOf)
    return toCsv({ heads: [columns.question, ...heads.slice(1)], rows })
  }
  return (
    <>
      <LoadFiles {...props} />
      <StudentFiles {...props} />
      {of.progress.length > 0 && (
        <>
          <GroupTable title={T.groups} groups={groups} labelOf={labelOf} />
          <GroupTable title={T.questionsHard} head={columns.question} groups={byId} labelOf={questionOf} />
          <div className="row screen-only">
            <button type="button" onClick={() => save('students', toCsv(progressRows(of.progress)))}>
              {T.csvStudents}
            </button>
            <button type="button" onClick={() => save('questions', questionCsv())}>
              {T.csvQuestions}
            </button>
            <button type="button" onClick={() => save('groups', toCsv(groupRows(groups, labelOf)))}>
              {T.csvGroups}
            </button>
          </div>
        </>
      )}
    </>
  )
}
