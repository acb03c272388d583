import { useEffect, useRef } from 'react'
import type { LearnAnswer, LearnItem } from '#web/client/use-learn.ts'
import { sourceHref } from '#web/format/source-link.ts'
import { isNoSource, sourceWords } from '#web/format/source.ts'
import { learn as T } from '#web/text/learn.ts'
import { Said } from './spoken.tsx'

function Sources({ cited, sources }: Pick<LearnAnswer, 'cited' | 'sources'>) {
  const known = new Map(cited.map((one) => [one.id, one]))
  return (
    <ul className="learn-sources" aria-label={T.sources}>
      {sources.map((id) => {
        const { title = sourceWords(id), locator = '' } = known.get(id) ?? {}
        const href = sourceHref(locator)
        if (isNoSource(id)) return <li key={id}>{sourceWords(id)}</li>
        return <li key={id}>{href ? <a href={href}>{title}</a> : [title, locator].filter(Boolean).join(', ')}</li>
      })}
    </ul>
  )
}

interface Props {
  item: LearnItem
  answer: LearnAnswer
  onNext: () => void
}

/** Whether it was right, why, and where that comes from. */
export function LearnFeedback({ item, answer, onNext }: Props) {
  const next = useRef<HTMLButtonElement>(null)
  useEffect(() => next.current?.focus(), [])
  const key = item.choices.find(({ id }) => id === answer.key)?.text ?? answer.key
  return (
    <div className="learn-feedback" data-right={answer.right}>
      <div role="status">
        <p>
          <strong>{answer.right ? T.right : T.wrong(key)}</strong>
        </p>
        <p>
          <Said>{answer.because}</Said>
        </p>
      </div>
      <Sources cited={answer.cited} sources={answer.sources} />
      <button type="button" className="main" ref={next} onClick={onNext}>
        {T.next}
      </button>
    </div>
  )
}
