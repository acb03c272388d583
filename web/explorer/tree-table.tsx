import { Link } from 'wouter'
import { explorer } from '#web/text/explorer.ts'
import { saysOf, seenOf } from './edge-words.ts'
import { edgeHeld, nodeHeld, together } from './holds.ts'
import type { Conditions } from './holds.ts'
import { Mark } from './mark.tsx'
import { heldWords, nodeName, recordHref, relationWords, windowWords } from './names.ts'
import { moreKey } from './outline.ts'
import { joinedIn } from './statements.ts'
import type { Joined } from './statements.ts'
import { groupsIn } from './tree.ts'
import type { NodeItem } from './tree.ts'

const T = explorer.table
const D = explorer.detail

interface Props {
  root: NodeItem
  asked: Conditions
  onAct: (key: string) => void
}

export function Actions({ item, onAct }: { item: NodeItem; onAct: (key: string) => void }) {
  const { node, isOpen } = item
  const href = recordHref(node)
  const name = nodeName(node)
  return (
    <>
      <button
        type="button"
        className="quiet"
        aria-expanded={isOpen}
        aria-label={isOpen ? D.closeOf(name) : D.openOf(name)}
        onClick={() => onAct(node.id)}
      >
        {isOpen ? D.close : D.open}
      </button>
      {href !== null && (
        <Link href={href} aria-label={D.recordOf(name)}>
          {D.record}
        </Link>
      )}
    </>
  )
}

function JoinedRow({ joined, asked, onAct }: { joined: Joined; asked: Conditions; onAct: Props['onAct'] }) {
  const { from, to, relation, direction } = joined
  const held = to.edges.map((edge) => edgeHeld(edge, asked)).reduce(together, nodeHeld(to.node, asked))
  const says = [...new Set(to.edges.map(saysOf).filter((words) => words !== ''))]
  const windows = windowWords(to.node)
  return (
    <tr data-holding={held.state} data-way={to.isOnWay}>
      <td data-head={T.heads.from}>{nodeName(from.node)}</td>
      <td data-head={T.heads.relation}>{relationWords(relation, direction)}</td>
      <th scope="row">
        <Mark kind={to.node.kind} holding={held.state} /> {nodeName(to.node)}
      </th>
      <td data-head={T.heads.kind}>{explorer.kinds[to.node.kind]}</td>
      <td data-head={T.heads.windows}>
        {to.node.kind === 'ingredient' ? windows.join('; ') || explorer.windows.none : ''}
      </td>
      {(asked.ph !== null || asked.heat_c !== null) && <td data-head={T.heads.held}>{heldWords(held, asked)}</td>}
      <td data-head={T.says}>{says.join('. ')}</td>
      <td data-head={T.seen}>{[...new Set(to.edges.map(seenOf))].join('; ')}</td>
      <td className="explorer-do">
        <Actions item={to} onAct={onAct} />
      </td>
    </tr>
  )
}

function Rest({ root, onAct }: Pick<Props, 'root' | 'onAct'>) {
  const names = new Map(joinedIn(root).map(({ from }) => [from.node.id, nodeName(from.node)]))
  const cut = groupsIn(root).filter(({ more }) => more > 0)
  if (cut.length === 0) return null
  return (
    <ul className="explorer-rest">
      {cut.map(({ key, of, relation, direction, more }) => (
        <li key={key}>
          <button type="button" onClick={() => onAct(moreKey(key))}>
            {explorer.showMore(more, relationWords(relation, direction), names.get(of) ?? of)}
          </button>
        </li>
      ))}
    </ul>
  )
}

/** The tree as a table: a row for every two things that are joined. */
export function TreeTable({ root, asked, onAct }: Props) {
  const rows = joinedIn(root)
  if (rows.length === 0) return <p>{T.empty}</p>
  const isAsked = asked.ph !== null || asked.heat_c !== null
  const { held, to, ...plain } = T.heads
  const heads: [string, string][] = [
    ['from', plain.from],
    ['relation', plain.relation],
    ['name', to],
    ['kind', plain.kind],
    ['windows', plain.windows],
    ...(isAsked ? [['held', held] as [string, string]] : []),
    ['says', T.says],
    ['seen', T.seen],
    ['do', T.action],
  ]
  return (
    <>
      <div className="scroll" tabIndex={0} role="region" aria-label={T.caption}>
        <table className="explorer-table">
          <caption className="hidden">{T.caption}</caption>
          <thead>
            <tr>
              {heads.map(([col, head]) => (
                <th key={col} scope="col" data-col={col}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((joined) => (
              <JoinedRow key={joined.key} joined={joined} asked={asked} onAct={onAct} />
            ))}
          </tbody>
        </table>
      </div>
      <Rest root={root} onAct={onAct} />
    </>
  )
}
