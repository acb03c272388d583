/** States before, the one at hand, states after; `tag` names the field of the last change, so that typing is one step. */
export interface History<T> {
  past: readonly T[]
  present: T
  future: readonly T[]
  tag: string | null
}

const LONGEST = 60

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [], tag: null })

/** Takes a new state in. Changes under one tag, one after the other, are one step. */
export function record<T>(history: History<T>, next: T, tag: string | null = null): History<T> {
  if (next === history.present) return history
  if (tag !== null && tag === history.tag) return { ...history, present: next, future: [] }
  return { past: [...history.past, history.present].slice(-LONGEST), present: next, future: [], tag }
}

export function undo<T>(history: History<T>): History<T> {
  const before = history.past.at(-1)
  if (before === undefined) return history
  return { past: history.past.slice(0, -1), present: before, future: [history.present, ...history.future], tag: null }
}

export function redo<T>(history: History<T>): History<T> {
  const [next, ...later] = history.future
  if (next === undefined) return history
  return { past: [...history.past, history.present], present: next, future: later, tag: null }
}
