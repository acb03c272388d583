import { useState } from 'react'
import type { ChangeEvent, FocusEvent, KeyboardEvent } from 'react'
import { readable } from '#web/client/use-labels.ts'
import { useNames } from '#web/client/use-names.ts'
import type { NameSuggestion } from '#web/client/use-names.ts'
import type { Picked } from '#web/state/edit.ts'

interface Options {
  typed: string
  onType: (typed: string) => void
  onPick: (picked: Picked) => void
  onText?: (typed: string) => void
  onEscape?: () => void
}

const NONE: readonly NameSuggestion[] = []

/** Place after a key, round the ends; -1 is the field itself. */
const stepped = (active: number, by: 1 | -1, length: number): number => {
  if (length === 0) return -1
  if (active < 0) return by === 1 ? 0 : length - 1
  return (active + by + length) % length
}

/** Which names fit and which of them is chosen; names of an earlier text stay in sight, but no key takes one of them. */
function useChoice(typed: string) {
  const [isWanted, setWanted] = useState(false)
  const [active, setActive] = useState(-1)
  const found = useNames(typed, isWanted)
  const names = found.state === 'ready' ? found.data : NONE
  const isOld = found.state !== 'ready' || found.old
  const isOpen = isWanted && typed.trim() !== ''
  return {
    isOpen,
    names,
    isOld,
    active: !isOld && active < names.length ? active : -1,
    state: found.state === 'ready' && found.old ? ('loading' as const) : found.state,
    open: () => {
      setWanted(true)
      setActive(-1)
    },
    close: () => {
      setWanted(false)
      setActive(-1)
    },
    step: (by: 1 | -1) => {
      if (!isOpen) setWanted(true)
      else if (!isOld) setActive(stepped(active, by, names.length))
    },
  }
}

/** Behaviour of the combobox by the keyboard pattern of WAI-ARIA APG: arrows choose, Enter takes, Escape closes. */
export function useCombobox({ typed, onType, onPick, onText, onEscape }: Options) {
  const { open, close, step, ...shown } = useChoice(typed)
  const { isOpen, names, active } = shown
  const take = (name: NameSuggestion) => {
    close()
    onPick({ ingredient: name.ingredient, name: readable(name.inci) })
  }
  const enter = () => {
    const name = isOpen ? names[active] : undefined
    if (name) return take(name)
    close()
    if (typed.trim() !== '') onText?.(typed)
  }
  const keys: Readonly<Record<string, () => void>> = {
    ArrowDown: () => step(1),
    ArrowUp: () => step(-1),
    Enter: enter,
    Escape: () => (isOpen ? close() : onEscape?.()),
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const perform = keys[event.key]
    // Enter ends a word that an input method is still composing; it is not meant for the list.
    if (!perform || event.nativeEvent.isComposing || event.ctrlKey || event.metaKey) return
    event.preventDefault()
    event.stopPropagation()
    perform()
  }
  const onChange = (event: ChangeEvent<HTMLInputElement>) => {
    onType(event.target.value)
    open()
  }
  const onBlur = (event: FocusEvent) => {
    if (!event.currentTarget.contains(event.relatedTarget)) close()
  }
  return { ...shown, input: { onChange, onKeyDown }, list: { onTake: take, onBlur } }
}
