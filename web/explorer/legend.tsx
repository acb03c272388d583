import { explorer } from '#web/text/explorer.ts'
import { Mark } from './mark.tsx'

const T = explorer.legend
const KINDS = ['ingredient', 'role', 'class', 'limit'] as const

/** What form and ring of a mark say. */
export function Legend({ isAsked, isWay, hasMore }: { isAsked: boolean; isWay: boolean; hasMore: boolean }) {
  return (
    <ul className="explorer-legend" aria-label={T.title}>
      {KINDS.map((kind) => (
        <li key={kind}>
          <Mark kind={kind} /> {explorer.kinds[kind]}
        </li>
      ))}
      {isAsked && (
        <>
          <li>
            <Mark kind="ingredient" holding="fails" /> {T.fails}
          </li>
          <li>
            <Mark kind="ingredient" holding="unknown" /> {T.unknown}
          </li>
        </>
      )}
      {isWay && (
        <li>
          <span className="explorer-way-line" aria-hidden="true" /> {T.way}
        </li>
      )}
      {hasMore && (
        <li>
          <Mark kind="more" /> {T.more}
        </li>
      )}
    </ul>
  )
}
