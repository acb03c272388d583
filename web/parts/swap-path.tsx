import { Link } from 'wouter'
import type { Swap } from '#web/client/use-swaps.ts'
import { wayHref } from '#web/explorer/address.ts'
import { claimHref } from '#web/format/claim.ts'
import { text } from '#web/text/text.ts'

interface Props {
  path: Swap['path']
  labelOf: (id: string) => string
}

/** The way through the graph: from, relation, to. */
export function SwapPath({ path, labelOf }: Props) {
  if (path.length === 0) return null
  return (
    <div>
      <h4>{text.swaps.path}</h4>
      <ol className="path">
        {path.map(({ from, relation, to, claim }, at) => {
          const href = claim === undefined ? null : claimHref(claim, from)
          const words = relation.replaceAll('-', ' ')
          return (
            <li key={`${from}${relation}${to}${at}`}>
              <span>{labelOf(from)}</span> <em>{href ? <Link href={href}>{words}</Link> : words}</em>{' '}
              <span>{labelOf(to)}</span>
            </li>
          )
        })}
      </ol>
      <p>
        <Link href={wayHref(path)}>{text.explorer.way}</Link>
      </p>
    </div>
  )
}
