import { useEffect, useId, useState } from 'react'
import { upTo } from '#web/format/number.ts'
import { readNumber } from '#web/recipe/number.ts'
import { text } from '#web/text/text.ts'

interface Props {
  label: string
  value: number | null
  /** smallest and largest value taken; `over` excludes the smallest itself */
  min: number
  max: number
  over?: boolean
  hint?: string
  hideLabel?: boolean
  placeholder?: string
  onChange: (value: number | null) => void
}

const shown = (value: number | null): string => (value === null ? '' : upTo(value, 4))

/** A field for a number with decimal point or comma. What cannot be read stays in the field and is said so. */
export function NumberField({ label, value, min, max, over, hint, hideLabel, placeholder, onChange }: Props) {
  const id = useId()
  const [typed, setTyped] = useState(shown(value))
  const [isBad, setBad] = useState(false)
  // A value from outside (undo, a stand-in) replaces what was typed; the echo of one's own typing does not.
  useEffect(() => {
    setTyped((now) => (now.trim() !== '' && readNumber(now) === value ? now : shown(value)))
    setBad(false)
  }, [value])
  const take = (next: string) => {
    setTyped(next)
    const read = readNumber(next)
    const fits = next.trim() === '' || (read !== null && read <= max && (over ? read > min : read >= min))
    setBad(!fits)
    if (fits) onChange(next.trim() === '' ? null : read)
  }
  return (
    <div className="field">
      <label htmlFor={id} className={hideLabel ? 'hidden' : undefined}>
        {label}
      </label>
      <input
        id={id}
        className="number"
        inputMode="decimal"
        autoComplete="off"
        value={typed}
        placeholder={placeholder}
        aria-invalid={isBad || undefined}
        aria-describedby={hint || isBad ? `${id}-hint` : undefined}
        onChange={(event) => take(event.target.value)}
      />
      {(hint || isBad) && (
        <small id={`${id}-hint`} className={isBad ? 'bad' : undefined}>
          {isBad ? text.settings.badNumber(min, max) : hint}
        </small>
      )}
    </div>
  )
}
