import { useId, useState } from 'react'
import { text } from '#web/text/text.ts'

interface Props {
  action: string
  hint?: string
  rows?: number
  onRead: (typed: string) => void
}

/** A large field for a recipe or for some lines of one. */
export function PasteBox({ action, hint, rows = 9, onRead }: Props) {
  const id = useId()
  const [typed, setTyped] = useState('')
  const [isEmpty, setEmpty] = useState(false)
  return (
    <form
      className="paste"
      onSubmit={(event) => {
        event.preventDefault()
        setEmpty(typed.trim() === '')
        if (typed.trim() === '') return
        onRead(typed)
        setTyped('')
      }}
    >
      <label htmlFor={id}>{text.paste.label}</label>
      <textarea
        id={id}
        rows={rows}
        spellCheck={false}
        value={typed}
        placeholder={text.paste.placeholder}
        aria-describedby={`${id}-hint`}
        onChange={(event) => setTyped(event.target.value)}
      />
      <small id={`${id}-hint`}>{hint ?? text.paste.hint}</small>
      {isEmpty && <p role="alert">{text.paste.empty}</p>}
      <button type="submit" className="main">
        {action}
      </button>
    </form>
  )
}
