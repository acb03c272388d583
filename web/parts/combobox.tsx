import { useId } from 'react'
import type { RefObject } from 'react'
import type { NameSuggestion } from '#web/client/use-names.ts'
import type { Picked } from '#web/state/edit.ts'
import { combobox as T } from '#web/text/combobox.ts'
import { ComboboxList } from './combobox-list.tsx'
import { useCombobox } from './use-combobox.ts'

export interface ComboboxProps {
  label: string
  hideLabel?: boolean
  typed: string
  onType: (typed: string) => void
  /** one of the list was taken */
  onPick: (picked: Picked) => void
  /** Enter without a choice: the text as it stands */
  onText?: (typed: string) => void
  /** Escape while the list is closed */
  onEscape?: () => void
  hint?: string
  placeholder?: string
  autoFocus?: boolean
  inputRef?: RefObject<HTMLInputElement | null>
}

/** What a screen reader is told of the list: that it is searched, how much fits, that nothing does. */
const stateWords = (state: string, names: readonly NameSuggestion[]): string => {
  if (state === 'failed') return T.failed
  if (state !== 'ready') return T.searching
  return names.length === 0 ? T.none : T.count(names.length)
}

/** A text field that suggests names of ingredients: WAI-ARIA combobox with a list, free text stays allowed. */
export function Combobox(props: ComboboxProps) {
  const { label, hideLabel, typed, hint, placeholder, autoFocus, inputRef } = props
  const id = useId()
  const { isOpen, names, active, isOld, state, input, list } = useCombobox(props)
  const options = `${id}-list`
  return (
    <div className="field combobox" onBlur={list.onBlur}>
      <label htmlFor={id} className={hideLabel ? 'hidden' : undefined}>
        {label}
      </label>
      <input
        id={id}
        ref={inputRef}
        role="combobox"
        aria-autocomplete="list"
        aria-expanded={isOpen}
        aria-controls={options}
        aria-activedescendant={isOpen && active >= 0 ? `${id}-${active}` : undefined}
        aria-describedby={`${id}-hint`}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="done"
        autoFocus={autoFocus}
        placeholder={placeholder}
        value={typed}
        {...input}
      />
      <small id={`${id}-hint`} className={hint === undefined ? 'hidden' : undefined}>
        {hint ?? T.hint}
      </small>
      <ComboboxList
        id={id}
        options={options}
        isOpen={isOpen}
        names={names}
        active={active}
        isOld={isOld}
        onTake={list.onTake}
      />
      <p role="status" className={isOpen && names.length === 0 ? 'combobox-state' : 'hidden'}>
        {isOpen && stateWords(state, names)}
      </p>
    </div>
  )
}
