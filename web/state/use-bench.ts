import { useCallback, useEffect, useState } from 'react'
import type { Bench } from './bench.ts'
import { record, redo, undo } from './history.ts'
import type { History } from './history.ts'
import { loadBench, saveBench } from './storage.ts'

export interface BenchStore {
  bench: Bench
  /** takes a change in; changes under one tag, one after the other, are one step of undo */
  change: (make: (bench: Bench) => Bench, tag?: string) => void
  undo: () => void
  redo: () => void
  canUndo: boolean
  canRedo: boolean
  /** false when the browser refuses to keep the bench */
  kept: boolean
}

const isTextField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches('textarea, select, input:not([type=checkbox]):not([type=radio])'))

/** Ctrl+Z and Ctrl+Shift+Z (or Ctrl+Y) outside text fields, where the browser's own undo has the word. */
function useUndoKeys(back: () => void, forth: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTextField(event.target)) return
      const key = event.key.toLowerCase()
      if (key !== 'z' && key !== 'y') return
      event.preventDefault()
      if (key === 'y' || event.shiftKey) forth()
      else back()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [back, forth])
}

/** The bench with its history, kept in this browser. */
export function useBench(): BenchStore {
  const [history, setHistory] = useState<History<Bench>>(() => loadBench(window.localStorage))
  const [kept, setKept] = useState(true)
  useEffect(() => setKept(saveBench(window.localStorage, history)), [history])
  const change = useCallback(
    (make: (bench: Bench) => Bench, tag?: string) => setHistory((now) => record(now, make(now.present), tag ?? null)),
    [],
  )
  const back = useCallback(() => setHistory(undo), [])
  const forth = useCallback(() => setHistory(redo), [])
  useUndoKeys(back, forth)
  const { past, present, future } = history
  return { bench: present, change, undo: back, redo: forth, canUndo: past.length > 0, canRedo: future.length > 0, kept }
}
