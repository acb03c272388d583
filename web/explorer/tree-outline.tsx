import { useId, useMemo, useState } from 'react'
import { explorer as T } from '#web/text/explorer.ts'
import { nodeHeld } from './holds.ts'
import type { Conditions } from './holds.ts'
import { Mark } from './mark.tsx'
import { heldWords, nodeName, relationWords } from './names.ts'
import { outlineRows } from './outline.ts'
import type { Row } from './outline.ts'
import { toggled } from './state.ts'
import type { NodeItem } from './tree.ts'
import { TreeList } from './tree-list.tsx'
import type { Entry } from './tree-list.tsx'

interface Props {
  root: NodeItem
  asked: Conditions
  chosen: string | null
  onChoose: (key: string) => void
  onAct: (key: string) => void
}

function nodeEntry(row: Extract<Row, { kind: 'node' }>, asked: Conditions): Entry {
  const { node, isAgain, isOnWay } = row.item
  const held = nodeHeld(node, asked)
  const more = [T.kinds[node.kind], isAgain ? T.again : '', isOnWay ? T.legend.way : '', heldWords(held, asked)]
  const words = more.filter((part) => part !== '')
  return {
    ...row,
    name: [nodeName(node), ...words].join(', '),
    content: (
      <span className="explorer-entry" data-holding={held.state} data-way={isOnWay}>
        <Mark kind={node.kind} holding={held.state} />
        <b>{nodeName(node)}</b> <small>{words.join(' · ')}</small>
      </span>
    ),
  }
}

function entryOf(row: Row, asked: Conditions): Entry {
  if (row.kind === 'node') return nodeEntry(row, asked)
  const { relation, direction, members, more } = row.item
  const words =
    row.kind === 'more' ? T.more(more) : T.outline.group(relationWords(relation, direction), members.length + more)
  return {
    ...row,
    name: words,
    content: (
      <span className="explorer-entry" data-kind={row.kind}>
        {row.kind === 'more' && <Mark kind="more" />}
        <i>{words}</i>
      </span>
    ),
  }
}

/** The tree as a nested list. */
export function TreeOutline({ root, asked, chosen, onChoose, onAct }: Props) {
  const helpId = useId()
  const [folded, setFolded] = useState<readonly string[]>([])
  const rows = useMemo(() => outlineRows(root, new Set(folded)), [root, folded])
  const entries = useMemo(() => rows.map((row) => entryOf(row, asked)), [rows, asked.ph, asked.heat_c])
  const act = (key: string) => {
    const row = rows.find((one) => one.key === key)
    if (row?.kind === 'group') setFolded(toggled(folded, key))
    else if (row) onAct(row.kind === 'node' ? row.item.node.id : key)
  }
  return (
    <>
      <p id={helpId} className="remark">
        {T.outline.help}
      </p>
      <TreeList
        label={T.outline.label}
        describedBy={helpId}
        entries={entries}
        chosen={chosen}
        onChoose={onChoose}
        onFold={act}
        onAct={act}
      />
    </>
  )
}
