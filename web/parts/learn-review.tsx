import { useState } from 'react'
import type { ChangeEvent } from 'react'
import type { ProgressStore } from '#web/client/use-learn-progress.ts'
import { dueOf, readProgress, together } from '#web/state/review.ts'
import type { Progress } from '#web/state/review.ts'
import { learn } from '#web/text/learn.ts'

const T = learn.review

/** Hands the progress over as a file, without a server. */
function saveFile(progress: Progress): void {
  const url = URL.createObjectURL(new Blob([JSON.stringify(progress)], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = url
  link.download = T.file
  link.click()
  URL.revokeObjectURL(url)
}

interface Props {
  store: ProgressStore
  onStart: () => void
}

/** What comes up again today, and the way in and out for the progress. */
export function LearnReview({ store: { progress, kept, change }, onStart }: Props) {
  const [said, setSaid] = useState('')
  const due = dueOf(progress, new Date())
  const known = Object.keys(progress.items).length
  const load = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0]
    if (!file) return
    const other = readProgress(await file.text())
    target.value = ''
    if (other === null) {
      setSaid(T.unreadable)
      return
    }
    const both = together(progress, other)
    change(() => both)
    setSaid(T.loaded(Object.keys(both.items).length))
  }
  return (
    <section className="card" aria-labelledby="review-title">
      <h2 id="review-title">{T.title}</h2>
      <p>{T.lead}</p>
      <p>
        {T.due(due.now.length, due.laterToday)} {T.known(known)}
      </p>
      {!kept && <p role="alert">{T.notKept}</p>}
      <div className="row">
        <button type="button" disabled={due.now.length === 0} onClick={onStart}>
          {T.start}
        </button>
        <button type="button" disabled={known === 0} onClick={() => saveFile(progress)}>
          {T.save}
        </button>
        <label className="field">
          <span>{T.load}</span>
          <input type="file" accept="application/json,.json" onChange={(event) => void load(event)} />
        </label>
      </div>
      <p role="status">{said}</p>
    </section>
  )
}
