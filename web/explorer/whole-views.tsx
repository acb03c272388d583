import { useId, useState } from 'react'
import { Link } from 'wouter'
import type { GraphNode } from '#web/client/use-graph.ts'
import { explorer } from '#web/text/explorer.ts'
import { nodeHeld } from './holds.ts'
import type { Conditions } from './holds.ts'
import { Mark } from './mark.tsx'
import { heldWords, nodeName, recordHref, windowWords } from './names.ts'
import { toggled } from './state.ts'
import { TreeList } from './tree-list.tsx'
import type { Entry } from './tree-list.tsx'
import { listOf } from './whole.ts'
import type { Selection, WholeNode } from './whole.ts'

const T = explorer.table
const KINDS: readonly GraphNode['kind'][] = ['role', 'class', 'limit', 'ingredient']
const PAGE = 100

interface Props {
  selection: Selection
  /** only names that hold this */
  words: string
  asked: Conditions
  chosen: string | null
  onChoose: (key: string) => void
  onMiddle: (id: string) => void
}

function NodeRow({
  node,
  links,
  asked,
  onMiddle,
}: { node: WholeNode; links: number } & Pick<Props, 'asked' | 'onMiddle'>) {
  const held = nodeHeld(node, asked)
  const href = recordHref(node)
  const name = nodeName(node)
  const D = explorer.detail
  return (
    <tr data-holding={held.state}>
      <th scope="row">
        <Mark kind={node.kind} holding={held.state} /> {name}
      </th>
      <td data-head={T.heads.kind}>{explorer.kinds[node.kind]}</td>
      <td data-head={T.heads.windows}>
        {node.kind === 'ingredient' ? windowWords(node).join('; ') || explorer.windows.none : ''}
      </td>
      {(asked.ph !== null || asked.heat_c !== null) && <td data-head={T.heads.held}>{heldWords(held, asked)}</td>}
      <td data-head={T.links}>{links}</td>
      <td className="explorer-do">
        <button type="button" className="quiet" aria-label={D.middleOf(name)} onClick={() => onMiddle(node.id)}>
          {D.middle}
        </button>
        {href !== null && (
          <Link href={href} aria-label={D.recordOf(name)}>
            {D.record}
          </Link>
        )}
      </td>
    </tr>
  )
}

/** All nodes as a table, kind by kind, a part at a time. */
export function WholeTable({ selection, words, asked, onMiddle }: Omit<Props, 'chosen' | 'onChoose'>) {
  const [shown, setShown] = useState(PAGE)
  const nodes = KINDS.flatMap((kind) => listOf(selection.nodes, kind, words))
  const isAsked = asked.ph !== null || asked.heat_c !== null
  const heads = [T.heads.to, T.heads.kind, T.heads.windows, ...(isAsked ? [T.heads.held] : []), T.links, T.action]
  return (
    <>
      <div className="scroll" tabIndex={0} role="region" aria-label={T.captionWhole}>
        <table className="explorer-table">
          <caption className="hidden">{T.captionWhole}</caption>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head === T.heads.to ? explorer.whole.name : head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {nodes.slice(0, shown).map((node) => {
              const links = selection.degree.get(node.id) ?? 0
              return <NodeRow key={node.id} node={node} links={links} asked={asked} onMiddle={onMiddle} />
            })}
          </tbody>
        </table>
      </div>
      {nodes.length > shown && (
        <button type="button" onClick={() => setShown(shown + PAGE)}>
          {T.next(Math.min(PAGE, nodes.length - shown))}
        </button>
      )}
    </>
  )
}

type Branch = { key: string; name: string; below: Branch[]; node?: WholeNode }

/** Kinds, then what there is of each; ingredients under their first letter. */
function branchesOf({ nodes }: Selection, words: string): Branch[] {
  const leaf = (node: WholeNode): Branch => ({ key: node.id, name: nodeName(node), below: [], node })
  return KINDS.map((kind) => {
    const list = listOf(nodes, kind, words)
    const name = explorer.outline.group(explorer.outline.kinds[kind], list.length)
    if (kind !== 'ingredient') return { key: `kind ${kind}`, name, below: list.map(leaf) }
    const letters = [...new Set(list.map((node) => nodeName(node).charAt(0)))]
    const below = letters.map((letter) => {
      const own = list.filter((node) => nodeName(node).startsWith(letter))
      return { key: `letter ${letter}`, name: explorer.outline.letter(letter, own.length), below: own.map(leaf) }
    })
    return { key: `kind ${kind}`, name, below }
  }).filter(({ below }) => below.length > 0)
}

function entriesOf(
  branches: readonly Branch[],
  isOpen: (key: string) => boolean,
  asked: Conditions,
  level = 1,
): Entry[] {
  return branches.flatMap((branch, at) => {
    const { key, name, below, node } = branch
    const held = node ? nodeHeld(node, asked) : null
    const more = held ? heldWords(held, asked) : ''
    const entry: Entry = {
      ...{ key, level, place: at + 1, of: branches.length },
      name: more === '' ? name : `${name}, ${more}`,
      isUnfolded: below.length === 0 ? null : isOpen(key),
      content: (
        <span className="explorer-entry" data-holding={held?.state ?? 'none'}>
          {node && <Mark kind={node.kind} holding={held?.state ?? 'none'} />} <b>{name}</b> <small>{more}</small>
        </span>
      ),
    }
    return entry.isUnfolded ? [entry, ...entriesOf(below, isOpen, asked, level + 1)] : [entry]
  })
}

/** All nodes as an outline: kinds, letters, names; Enter puts one into the middle. */
export function WholeOutline({ selection, words, asked, chosen, onChoose, onMiddle }: Props) {
  const helpId = useId()
  const [open, setOpen] = useState<readonly string[]>(['kind role'])
  // While a name is sought all is unfolded: what fits is to be seen.
  const isSought = words.trim() !== ''
  const entries = entriesOf(branchesOf(selection, words), (key) => isSought || open.includes(key), asked)
  const act = (key: string) => {
    const entry = entries.find((one) => one.key === key)
    if (entry?.isUnfolded === null) onMiddle(key)
    else setOpen(toggled(open, key))
  }
  return (
    <>
      <p id={helpId} className="remark">
        {explorer.whole.help}
      </p>
      <TreeList
        label={explorer.outline.label}
        describedBy={helpId}
        entries={entries}
        chosen={chosen}
        onChoose={onChoose}
        onFold={(key) => setOpen(toggled(open, key))}
        onAct={act}
      />
    </>
  )
}
