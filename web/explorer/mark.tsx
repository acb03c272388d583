import type { GraphNode } from '#web/client/use-graph.ts'
import type { Holding } from './holds.ts'

interface Props {
  kind: GraphNode['kind'] | 'more'
  holding?: Holding
}

const FORMS = {
  ingredient: <circle cx="10" cy="10" r="7" className="mark-full" />,
  role: <rect x="3.5" y="3.5" width="13" height="13" />,
  class: (
    <>
      <path d="M10 1.8 18.2 10 10 18.2 1.8 10Z" />
      <path d="M10 6 14 10 10 14 6 10Z" className="mark-full" />
    </>
  ),
  limit: <path d="M10 2 18.5 17H1.5Z" />,
  more: (
    <>
      <circle cx="10" cy="10" r="6.5" />
      <path d="M10 6.5v7M6.5 10h7" />
    </>
  ),
}

/** The mark of a node as the drawing shows it; it says nothing that the words beside it do not. */
export function Mark({ kind, holding = 'none' }: Props) {
  return (
    <svg
      className="explorer-mark"
      data-kind={kind}
      data-holding={holding}
      viewBox="0 0 20 20"
      width="20"
      height="20"
      aria-hidden="true"
    >
      {FORMS[kind]}
      {holding === 'fails' && <path d="M3 3 17 17" className="mark-strike" />}
    </svg>
  )
}
