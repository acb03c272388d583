import { useState } from 'react'
import type { Progress } from '#web/state/review.ts'
import { loadProgress, saveProgress } from '#web/state/review.ts'

export interface ProgressStore {
  progress: Progress
  /** false: this browser does not keep it */
  kept: boolean
  change: (how: (now: Progress) => Progress) => void
}

/** What was answered so far, kept in this browser. */
export function useLearnProgress(): ProgressStore {
  const [progress, setProgress] = useState(() => loadProgress(window.localStorage))
  const [kept, setKept] = useState(true)
  const change: ProgressStore['change'] = (how) => {
    const next = how(progress)
    setProgress(next)
    setKept(saveProgress(window.localStorage, next))
  }
  return { progress, kept, change }
}
