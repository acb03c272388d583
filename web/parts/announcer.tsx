import { useSyncExternalStore } from 'react'

/** What was said last, with a count: the same words twice are to be heard twice. */
let said = { words: '', count: 0 }
const listeners = new Set<() => void>()

/** Says something that happened to whoever cannot see it; politely, when the reader has finished. */
export function announce(words: string): void {
  said = { words, count: said.count + 1 }
  for (const tell of listeners) tell()
}

const subscribe = (tell: () => void): (() => void) => {
  listeners.add(tell)
  return () => void listeners.delete(tell)
}

/** The place where announcements are read from: two regions in turn, since a region that stays the same is not read. */
export function Announcer() {
  const { words, count } = useSyncExternalStore(subscribe, () => said)
  return (
    <div className="hidden">
      <p aria-live="polite">{count % 2 === 0 ? words : ''}</p>
      <p aria-live="polite">{count % 2 === 1 ? words : ''}</p>
    </div>
  )
}
