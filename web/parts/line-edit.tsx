import { useState } from 'react'
import type { ReactNode } from 'react'
import type { BenchLine } from '#web/state/bench.ts'
import type { Picked } from '#web/state/edit.ts'
import { text } from '#web/text/text.ts'
import { Combobox } from './combobox.tsx'

interface Props {
  line: BenchLine
  onRead: (typed: string) => void
  onPick: (picked: Picked) => void
  onCancel?: () => void
  /** what else can be done with a line while it is open */
  children?: ReactNode
}

/** Another name for a line out of the list, or its text corrected and read again. */
export function LineEdit({ line, onRead, onPick, onCancel, children }: Props) {
  const [typed, setTyped] = useState(line.kind === 'unread' ? line.typed : line.name)
  const read = () => {
    if (typed.trim() !== '') onRead(typed)
  }
  return (
    <form
      className="line-edit"
      onSubmit={(event) => {
        event.preventDefault()
        read()
      }}
    >
      <Combobox
        label={text.recipe.editLabel}
        typed={typed}
        onType={setTyped}
        onPick={onPick}
        onText={read}
        autoFocus={onCancel !== undefined}
        {...(onCancel && { onEscape: onCancel })}
      />
      <div className="row">
        <button type="submit">{text.recipe.again}</button>
        {children}
        {onCancel && (
          <button type="button" className="quiet" onClick={onCancel}>
            {text.recipe.cancel}
          </button>
        )}
      </div>
    </form>
  )
}
