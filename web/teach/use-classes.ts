import { useCallback, useState } from 'react'
import { openClass, withClass } from '#web/state/teach.ts'
import type { Classes, TeachClass } from '#web/state/teach.ts'
import { loadClasses, saveClasses } from '#web/state/teach-keep.ts'

export interface ClassStore {
  all: Classes
  /** the class that is worked on; null: there is none yet */
  now: TeachClass | null
  /** false: this browser does not keep them */
  kept: boolean
  change: (how: (all: Classes) => Classes) => void
  /** changes the class that is worked on */
  changeNow: (how: (now: TeachClass) => TeachClass) => void
}

/** The classes of this device, kept with every change. */
export function useClasses(): ClassStore {
  const [{ all, kept }, set] = useState(() => ({ all: loadClasses(window.localStorage), kept: true }))
  const change = useCallback(
    (how: (all: Classes) => Classes) =>
      set((before) => {
        const next = how(before.all)
        return next === before.all ? before : { all: next, kept: saveClasses(window.localStorage, next) }
      }),
    [],
  )
  const changeNow = useCallback(
    (how: (now: TeachClass) => TeachClass) =>
      change((before) => {
        const now = openClass(before)
        return now ? withClass(before, now.id, how) : before
      }),
    [change],
  )
  return { all, now: openClass(all), kept, change, changeNow }
}
