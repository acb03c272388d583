import { useId, useState } from 'react'
import type { BenchLine } from '#web/state/bench.ts'
import { text } from '#web/text/en.ts'

interface Props {
  line: BenchLine
  onRead: (typed: string) => void
  onCancel?: () => void
}

/** A field to correct the text of one line and read it again. */
export function LineEdit({ line, onRead, onCancel }: Props) {
  const id = useId()
  const [typed, setTyped] = useState(line.kind === 'unread' ? line.typed : line.name)
  return (
    <form
      className="line-edit"
      onSubmit={(event) => {
        event.preventDefault()
        if (typed.trim() !== '') onRead(typed)
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onCancel?.()
      }}
    >
      <label htmlFor={id} className="hidden">
        {text.recipe.editLabel}
      </label>
      <input
        id={id}
        autoFocus={onCancel !== undefined}
        value={typed}
        spellCheck={false}
        onChange={(event) => setTyped(event.target.value)}
      />
      <button type="submit">{text.recipe.again}</button>
      {onCancel && (
        <button type="button" className="quiet" onClick={onCancel}>
          {text.recipe.cancel}
        </button>
      )}
    </form>
  )
}
