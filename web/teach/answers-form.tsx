import { useId, useRef, useState } from 'react'
import type { FormEvent } from 'react'
import type { Student } from '#web/state/teach.ts'
import { readLetters, readPasted } from '#web/state/teach-letters.ts'
import type { LineFault, Pasted } from '#web/state/teach-letters.ts'
import { teach } from '#web/text/teach.ts'
import { faultWords } from './fault-words.ts'

const T = teach.results

interface Props {
  /** how many choices each question has */
  choices: readonly number[]
  /** who is in the table already */
  names: readonly string[]
  onAdd: (students: Student[]) => void
}

function faultOf({ name, typed }: Student, { names, choices }: Props): LineFault | null {
  if (name === '') return { code: 'no-name' }
  if (names.includes(name)) return { code: 'twice', name }
  const read = readLetters(typed, choices)
  if (read === null) return { code: 'no-answers' }
  return 'fault' in read ? read.fault : null
}

/** One student after the other, without leaving the keyboard. */
function AddOne(props: Props) {
  const id = useId()
  const first = useRef<HTMLInputElement>(null)
  const [name, setName] = useState('')
  const [typed, setTyped] = useState('')
  const [fault, setFault] = useState<LineFault | null>(null)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const student = { name: name.trim(), typed: typed.trim() }
    const wrong = faultOf(student, props)
    setFault(wrong)
    if (wrong) return
    props.onAdd([student])
    setName('')
    setTyped('')
    first.current?.focus()
  }
  return (
    <form onSubmit={submit}>
      <h2>{T.one}</h2>
      <div className="row">
        <div className="field">
          <label htmlFor={`${id}-name`}>{T.name}</label>
          <input
            id={`${id}-name`}
            ref={first}
            value={name}
            maxLength={100}
            autoComplete="off"
            onChange={({ target }) => setName(target.value)}
          />
        </div>
        <div className="field">
          <label htmlFor={`${id}-letters`}>{T.letters}</label>
          <input
            id={`${id}-letters`}
            value={typed}
            maxLength={200}
            autoComplete="off"
            spellCheck={false}
            aria-describedby={`${id}-hint`}
            onChange={({ target }) => setTyped(target.value)}
          />
        </div>
        <button type="submit">{T.add}</button>
      </div>
      <small id={`${id}-hint`}>{T.lettersHint(props.choices.length)}</small>
      {fault && (
        <p role="alert" className="bad">
          {faultWords(fault)}
        </p>
      )}
    </form>
  )
}

/** What was taken out of the pasted lines, and what stayed for which reason. */
function Outcome({ took, faults }: { took: number; faults: Pasted['faults'] }) {
  return (
    <div role="status">
      {took > 0 && <p>{T.took(took)}</p>}
      {faults.length > 0 && (
        <>
          <p>{T.left(faults.length)}</p>
          <ul>
            {faults.map(({ line, words, fault }) => (
              <li key={line}>
                {T.line(line)}, “{words.trim().slice(0, 60)}”: {faultWords(fault)}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

/** Several students at once; lines that cannot be read stay in the field. */
function PasteMany({ choices, names, onAdd }: Props) {
  const id = useId()
  const [words, setWords] = useState('')
  const [outcome, setOutcome] = useState<{ took: number; faults: Pasted['faults'] } | null>(null)
  const take = () => {
    const { students, faults } = readPasted(words, choices, names)
    if (students.length > 0) onAdd(students)
    setWords(faults.map((one) => one.words).join('\n'))
    setOutcome({ took: students.length, faults: faults.map((one, at) => ({ ...one, line: at + 1 })) })
  }
  return (
    <details>
      <summary>{T.paste}</summary>
      <div className="field">
        <label htmlFor={id}>{T.pasteLabel}</label>
        <textarea
          id={id}
          rows={6}
          value={words}
          spellCheck={false}
          aria-describedby={`${id}-hint`}
          onChange={({ target }) => setWords(target.value)}
        />
        <small id={`${id}-hint`}>{T.pasteHint}</small>
      </div>
      <button type="button" disabled={words.trim() === ''} onClick={take}>
        {T.take}
      </button>
      {outcome && <Outcome {...outcome} />}
    </details>
  )
}

/** Letters of students, one at a time or many at once. */
export function AnswersForm(props: Props) {
  return (
    <section className="card screen-only" aria-label={T.one}>
      <AddOne {...props} />
      <PasteMany {...props} />
    </section>
  )
}
