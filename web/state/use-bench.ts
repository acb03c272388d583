import { useCallback, useEffect, useState } from 'react'
import type { Bench } from './bench.ts'
import { record, redo, undo } from './history.ts'
import type { History } from './history.ts'
import { loadRecipes, saveRecipes, withBench, withRecipeId } from './recipes.ts'
import { loadBench, saveBench } from './storage.ts'

export interface BenchStore {
  bench: Bench
  /** as it was one step ago; null at the first */
  before: Bench | null
  /** the last undo or redo, counted, to say it */
  stepped: { kind: 'undone' | 'redone'; count: number } | null
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

const named = (bench: Bench): Bench =>
  bench.recipe === undefined ? withRecipeId(loadRecipes(window.localStorage), bench, new Date()) : bench

/** A bench from before there was a list becomes the first recipe of it. */
function openHistory(): History<Bench> {
  const history = loadBench(window.localStorage)
  return { ...history, present: named(history.present) }
}

/** Keeps the bench with its history, and its recipe in the list. @returns false when the browser refuses */
function keepAll(history: History<Bench>): boolean {
  const store = window.localStorage
  const before = loadRecipes(store)
  const recipes = withBench(before, history.present, new Date())
  return saveBench(store, history) && (recipes === before || saveRecipes(store, recipes))
}

/** Puts a kept recipe on the bench, one step of undo away from what was there; for pages that show no bench. */
export function openRecipe(bench: Bench): boolean {
  return keepAll(record(openHistory(), bench))
}

/** The bench with its history, kept in this browser. */
export function useBench(): BenchStore {
  const [history, setHistory] = useState<History<Bench>>(openHistory)
  const [kept, setKept] = useState(true)
  useEffect(() => setKept(keepAll(history)), [history])
  const change = useCallback(
    (make: (bench: Bench) => Bench, tag?: string) =>
      setHistory((now) => record(now, named(make(now.present)), tag ?? null)),
    [],
  )
  const [stepped, setStepped] = useState<BenchStore['stepped']>(null)
  const step = useCallback((kind: 'undone' | 'redone', go: (now: History<Bench>) => History<Bench>) => {
    setHistory(go)
    setStepped((last) => ({ kind, count: (last?.count ?? 0) + 1 }))
  }, [])
  const back = useCallback(() => step('undone', undo), [step])
  const forth = useCallback(() => step('redone', redo), [step])
  useUndoKeys(back, forth)
  const { past, present, future } = history
  return {
    bench: present,
    before: past.at(-1) ?? null,
    stepped,
    change,
    undo: back,
    redo: forth,
    canUndo: past.length > 0,
    canRedo: future.length > 0,
    kept,
  }
}
