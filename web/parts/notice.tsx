import type { ReactNode } from 'react'

/** Says what has just happened, with what can be done about it. */
export function Notice({ words, children }: { words: string; children?: ReactNode }) {
  return (
    <div className="notice">
      <p role="status">{words}</p>
      <div className="row">{children}</div>
    </div>
  )
}
