import { useEffect, useId, useState } from 'react'
import { dropLooseText, looseTextAt } from '#web/state/loose-text.ts'
import { text } from '#web/text/text.ts'

interface Props {
  /** names the field, so that what is typed finds its place again after a load */
  place: 'start' | 'lines' | 'another'
  action: string
  hint?: string
  rows?: number
  onRead: (typed: string) => void
}

/** A large field for a recipe or for some lines of one. */
export function PasteBox({ place, action, hint, rows = 9, onRead }: Props) {
  const id = useId()
  const [typed, setTyped] = useState(() => looseTextAt(window.sessionStorage, place))
  useEffect(() => dropLooseText(window.sessionStorage, place), [place])
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
        data-place={place}
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
