import { useRef } from 'react'
import type { KeyboardEvent, PointerEvent } from 'react'
import { text } from '#web/text/text.ts'
import { dropPlace, markDrop } from './drop-place.ts'

interface Props {
  lineKey: string
  name: string
  /** place of the line, counted from 0 */
  at: number
  onMove: (to: number) => void
}

/** A handle to drag a line by; with it in focus the arrow keys move the line. */
export function MoveHandle({ lineKey, name, at, onMove }: Props) {
  const dragged = useRef(false)
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && dragged.current) {
      dragged.current = false
      markDrop(null, null)
    }
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return
    event.preventDefault()
    onMove(event.key === 'ArrowUp' ? at - 1 : at + 1)
  }
  const start = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    dragged.current = true
  }
  const move = (event: PointerEvent) => {
    if (dragged.current) markDrop(lineKey, dropPlace(event.clientY))
  }
  const end = (event: PointerEvent) => {
    if (!dragged.current) return
    dragged.current = false
    markDrop(null, null)
    const to = dropPlace(event.clientY)
    if (to !== null && to !== at) onMove(to)
  }
  const cancel = () => {
    dragged.current = false
    markDrop(null, null)
  }
  return (
    <button
      type="button"
      className="grip"
      aria-label={text.recipe.moveOf(name)}
      title={text.recipe.moveHint}
      onKeyDown={onKeyDown}
      onPointerDown={start}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={cancel}
    >
      <svg viewBox="0 0 12 18" width="12" height="18" aria-hidden="true">
        <path d="M3 4h6M3 9h6M3 14h6" />
      </svg>
    </button>
  )
}
