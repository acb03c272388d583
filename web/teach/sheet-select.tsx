import type { Quiz } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'

const T = teach.quiz

interface Props {
  quizzes: readonly Quiz[]
  /** empty: a new one */
  open: string
  onOpen: (id: string) => void
  canMake?: boolean
}

/** Which sheet of the class is looked at. */
export function SheetSelect({ quizzes, open, onOpen, canMake = false }: Props) {
  return (
    <label className="field">
      <span>{T.sheets}</span>
      <select className="sheet-select" value={open} onChange={({ target }) => onOpen(target.value)}>
        {quizzes.map(({ id, seed, count, students }) => (
          <option key={id} value={id}>
            {T.option(seed, count, students.length)}
          </option>
        ))}
        {canMake && <option value="">{T.another}</option>}
      </select>
    </label>
  )
}
