import { useState } from 'react'
import type { Finding } from '#web/client/use-check.ts'
import type { BenchLine } from '#web/state/bench.ts'
import type { Standing } from '#web/state/line-view.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { LineActions } from './line-actions.tsx'
import { lineActs } from './line-acts.ts'
import { hasBelow, LineBelow } from './line-below.tsx'
import { MassCell, PhaseCell, ShareCell } from './line-cells.tsx'
import { MoveHandle } from './line-move.tsx'
import { LineName, nameOf } from './line-name.tsx'
import type { LineReply } from './line-name.tsx'

interface Props {
  line: BenchLine
  /** place of the line, counted from 0, and how many there are */
  at: number
  count: number
  neighbour: string | null
  standing: Standing
  reply: LineReply | undefined
  findings: readonly Finding[]
  share_percent: number | null
  batch_g: number | null
  isFull: boolean
  change: BenchStore['change']
}

type CellProps = Pick<Props, 'line' | 'reply' | 'share_percent' | 'batch_g' | 'change'> & { name: string }

function Cells({ line, name, reply, share_percent, batch_g, change }: CellProps) {
  if (line.kind !== 'ingredient') return <td colSpan={4} role="cell" />
  const of = { line, name, share_percent, change }
  return (
    <>
      <ShareCell {...of} />
      <MassCell {...of} batch_g={batch_g} />
      <PhaseCell line={line} name={name} change={change} />
      <td className="roles" role="cell" data-label={text.recipe.does}>
        {line.aside ? '' : reply?.roles.map(({ label }) => label).join(', ')}
      </td>
    </>
  )
}

/** One line of the recipe with all that belongs to it. */
export function RecipeLine({ at, count, neighbour, standing, findings, isFull, ...rest }: Props) {
  const { line, reply, change } = rest
  const [isEditing, setEditing] = useState(false)
  const name = nameOf(line, standing, reply)
  const acts = lineActs({ line, name, at, count, neighbour, change })
  const below = { line, name, at, standing, findings, isEditing, acts }
  return (
    <tbody
      role="rowgroup"
      className="line"
      data-line={line.key}
      data-missing={line.missing || undefined}
      data-aside={line.aside || undefined}
    >
      <tr role="row">
        <td className="move" role="cell">
          <MoveHandle lineKey={line.key} name={name} at={at} onMove={acts.move} />
        </td>
        <th scope="row" role="rowheader">
          <LineName line={line} standing={standing} reply={reply} />
        </th>
        <Cells {...rest} name={name} />
        <LineActions
          line={line}
          name={name}
          canMiss={standing.state === 'known' && !line.aside}
          isFull={isFull}
          isEditing={isEditing}
          acts={acts}
          change={change}
          onEdit={setEditing}
        />
      </tr>
      {hasBelow(below) && (
        <tr role="row" className="below">
          <LineBelow {...below} onDone={() => setEditing(false)} />
        </tr>
      )}
    </tbody>
  )
}
