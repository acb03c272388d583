import { useState } from 'react'
import type { LearnItem } from '#web/client/use-learn.ts'
import type { ProgressStore } from '#web/client/use-learn-progress.ts'
import { withAnswer, withoutItem } from '#web/state/review.ts'
import { learn as T } from '#web/text/learn.ts'
import { LearnItemCard } from './learn-item.tsx'

interface Props {
  items: readonly LearnItem[]
  change: ProgressStore['change']
  /** what follows the last question, in words */
  after: string
  onEnd: () => void
}

/** Questions one after the other, then how it went. */
export function LearnSet({ items, change, after, onEnd }: Props) {
  const [at, setAt] = useState(0)
  const [right, setRight] = useState(0)
  const item = items[at]
  if (!item) {
    return (
      <div className="card">
        <p role="status">{T.done(right, items.length)}</p>
        <button type="button" className="main" onClick={onEnd}>
          {after}
        </button>
      </div>
    )
  }
  return (
    <LearnItemCard
      key={item.id}
      item={item}
      place={T.place(at + 1, items.length)}
      onAnswered={(isRight) => {
        setRight((before) => before + (isRight ? 1 : 0))
        change((now) => withAnswer(now, item, isRight, new Date()))
      }}
      onGone={() => change((now) => withoutItem(now, item.id))}
      onNext={() => setAt(at + 1)}
    />
  )
}
