import { useRef } from 'react'
import type { KeyboardEvent, MouseEvent, ReactNode } from 'react'
import { rowAfter, rowByLetters } from './outline.ts'
import type { Move, Place } from './outline.ts'

/** One entry of a tree; `isUnfolded` is null where there is nothing to unfold. */
export interface Entry extends Place {
  /** all that a screen reader says of it */
  name: string
  isUnfolded: boolean | null
  content: ReactNode
}

interface Props {
  label: string
  describedBy: string
  entries: readonly Entry[]
  chosen: string | null
  onChoose: (key: string) => void
  onFold: (key: string, isUnfolded: boolean) => void
  /** Enter */
  onAct: (key: string) => void
}

const MOVES: Readonly<Record<string, Move>> = { ArrowUp: 'up', ArrowDown: 'down', Home: 'first', End: 'last' }
/** Letters typed within this time are one word [ms]. */
const WORD_MS = 700

const isLetter = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean =>
  key.length === 1 && key !== ' ' && !ctrlKey && !metaKey && !altKey

/** Letters as they are typed, joined to the beginning of a word. */
function useTyped(): (letter: string, now_ms: number) => string {
  const typed = useRef({ word: '', at_ms: 0 })
  return (letter, now_ms) => {
    const { word, at_ms } = typed.current
    typed.current = { word: now_ms - at_ms < WORD_MS ? word + letter : letter, at_ms: now_ms }
    return typed.current.word
  }
}

interface ItemProps extends Pick<Props, 'onFold'> {
  entry: Entry
  /** the one entry that the Tab key stops at */
  isStop: boolean
  onGo: (key: string) => void
}

function Item({ entry, isStop, onGo, onFold }: ItemProps) {
  const { key, level, place, of, name, isUnfolded, content } = entry
  const twist = (event: MouseEvent) => {
    if (isUnfolded === null) return
    event.stopPropagation()
    onGo(key)
    onFold(key, !isUnfolded)
  }
  return (
    <li
      data-key={key}
      data-level={Math.min(level, 9)}
      role="treeitem"
      aria-level={level}
      aria-posinset={place}
      aria-setsize={of}
      aria-label={name}
      aria-selected={isStop}
      {...(isUnfolded !== null && { 'aria-expanded': isUnfolded })}
      tabIndex={isStop ? 0 : -1}
      onClick={() => onGo(key)}
    >
      <span className="explorer-twist" aria-hidden="true" onClick={twist}>
        {isUnfolded === null ? '' : isUnfolded ? '▾' : '▸'}
      </span>
      {content}
    </li>
  )
}

/** A tree for the keyboard and for screen readers: one stop of the Tab key, arrows within. */
export function TreeList({ label, describedBy, entries, chosen, onChoose, onFold, onAct }: Props) {
  const list = useRef<HTMLUListElement>(null)
  const typed = useTyped()
  const stop = entries.some(({ key }) => key === chosen) ? chosen : (entries[0]?.key ?? null)
  const go = (key: string) => {
    onChoose(key)
    list.current?.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus()
  }
  const onKey = (event: KeyboardEvent) => {
    const entry = entries.find(({ key }) => key === stop)
    if (!entry) return
    const { key, isUnfolded } = entry
    const move = MOVES[event.key]
    if (move) go(rowAfter(entries, key, move))
    else if (event.key === 'ArrowRight' && isUnfolded === false) onFold(key, true)
    else if (event.key === 'ArrowRight') go(rowAfter(entries, key, 'child'))
    else if (event.key === 'ArrowLeft' && isUnfolded === true && entry.level > 1) onFold(key, false)
    else if (event.key === 'ArrowLeft') go(rowAfter(entries, key, 'parent'))
    else if (event.key === 'Enter' || event.key === ' ') onAct(key)
    else if (isLetter(event)) go(rowByLetters(entries, key, typed(event.key, event.timeStamp), ({ name }) => name))
    else return
    event.preventDefault()
  }
  return (
    <ul
      ref={list}
      role="tree"
      aria-label={label}
      aria-describedby={describedBy}
      className="explorer-tree"
      onKeyDown={onKey}
    >
      {entries.map((entry) => (
        <Item key={entry.key} entry={entry} isStop={entry.key === stop} onGo={go} onFold={onFold} />
      ))}
    </ul>
  )
}
