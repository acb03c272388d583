import { Link } from 'wouter'
import type { GraphNode } from '#web/client/use-graph.ts'
import { explorer } from '#web/text/explorer.ts'
import { nodeHeld } from './holds.ts'
import type { Conditions } from './holds.ts'
import { Mark } from './mark.tsx'
import { heldWords, nodeName, recordHref, windowWords } from './names.ts'
import type { Statement } from './statements.ts'
import { Said } from '#web/parts/spoken.tsx'

const T = explorer.detail
/** Statements that are shown of one node. */
const AT_MOST = 6

interface Props {
  node: GraphNode | null
  asked: Conditions
  statements: readonly Statement[]
  /** null: it can be neither opened nor closed here */
  isOpen: boolean | null
  onAct: () => void
  /** left out for what stands there already */
  onMiddle?: () => void
}

function Statements({ statements }: Pick<Props, 'statements'>) {
  if (statements.length === 0) return null
  return (
    <>
      <h3>{T.statements}</h3>
      <ul>
        {statements.slice(0, AT_MOST).map(({ key, words, says, seen }) => (
          <li key={key}>
            {words}
            {says !== '' && (
              <>
                : <Said>{says}</Said>
              </>
            )}{' '}
            {seen !== '' && <small>({seen})</small>}
          </li>
        ))}
        {statements.length > AT_MOST && <li>{T.more(statements.length - AT_MOST)}</li>}
      </ul>
    </>
  )
}

/** What is known of the chosen node, and what can be done with it. */
export function Detail({ node, asked, statements, isOpen, onAct, onMiddle }: Props) {
  if (!node) return <p className="card explorer-detail">{T.none}</p>
  const name = nodeName(node)
  const href = recordHref(node)
  const held = nodeHeld(node, asked)
  const windows = windowWords(node)
  return (
    <section className="card explorer-detail" aria-labelledby="chosen-title" data-holding={held.state}>
      <h2 id="chosen-title">
        <Mark kind={node.kind} holding={held.state} /> {name}
      </h2>
      <p>
        {[
          explorer.kinds[node.kind],
          ...(node.kind === 'ingredient' ? (windows.length > 0 ? windows : [explorer.windows.none]) : []),
          ...(node.links > 0 ? [T.links(node.links)] : []),
        ].join(' · ')}
      </p>
      {held.state !== 'none' && <p className="explorer-held">{heldWords(held, asked)}</p>}
      <p className="row">
        {isOpen !== null && (
          <button type="button" aria-label={isOpen ? T.closeOf(name) : T.openOf(name)} onClick={onAct}>
            {isOpen ? T.close : T.open}
          </button>
        )}
        {onMiddle && (
          <button type="button" aria-label={T.middleOf(name)} onClick={onMiddle}>
            {T.middle}
          </button>
        )}
        {href !== null && (
          <Link href={href} className="button" aria-label={T.recordOf(name)}>
            {T.record}
          </Link>
        )}
      </p>
      <Statements statements={statements} />
    </section>
  )
}
