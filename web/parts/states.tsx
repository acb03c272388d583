import type { ReactNode } from 'react'
import type { Question } from '#web/client/question.ts'
import { text } from '#web/text/text.ts'

export function Loading({ children }: { children: ReactNode }) {
  return (
    <p role="status" className="state">
      {children}
    </p>
  )
}

type Failure = Extract<Question<unknown>, { state: 'failed' }>

export function Failed({ failure }: { failure: Failure }) {
  return (
    <div role="alert" className="state failed">
      <p>{text.app.failed(failure.message.replace(/\.$/, ''))}</p>
      <button type="button" onClick={failure.retry}>
        {text.app.retry}
      </button>
    </div>
  )
}
