import { useState } from 'react'
import type { Finding } from '#web/client/use-check.ts'
import type { BenchLine } from '#web/state/bench.ts'
import type { Standing } from '#web/state/line-view.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/en.ts'
import { LineActions } from './line-actions.tsx'
import { hasBelow, LineBelow } from './line-below.tsx'
import { MassCell, PhaseCell, ShareCell } from './line-cells.tsx'
import { LineName, nameOf } from './line-name.tsx'
import type { LineReply } from './line-name.tsx'

interface Props {
  line: BenchLine
  standing: Standing
  reply: LineReply | undefined
  findings: readonly Finding[]
  share_percent: number | null
  batch_g: number | null
  isFull: boolean
  change: BenchStore['change']
}

/** One line of the recipe with all that belongs to it. */
export function RecipeLine({ line, standing, reply, findings, share_percent, batch_g, isFull, change }: Props) {
  const [isEditing, setEditing] = useState(false)
  const name = nameOf(line, standing, reply)
  const isRead = line.kind === 'ingredient'
  const below = { line, standing, findings, isEditing }
  return (
    <tbody
      role="rowgroup"
      className="line"
      data-missing={line.missing || undefined}
      data-aside={line.aside || undefined}
    >
      <tr role="row">
        <th scope="row" role="rowheader">
          <LineName line={line} standing={standing} reply={reply} />
        </th>
        {isRead ? (
          <>
            <ShareCell line={line} name={name} share_percent={share_percent} change={change} />
            <MassCell share_percent={share_percent} batch_g={batch_g} />
            <PhaseCell line={line} name={name} change={change} />
            <td className="roles" role="cell" data-label={text.recipe.does}>
              {line.aside ? '' : reply?.roles.map(({ label }) => label).join(', ')}
            </td>
          </>
        ) : (
          <td colSpan={4} role="cell" />
        )}
        <LineActions
          line={line}
          name={name}
          canMiss={standing.state === 'known' && !line.aside}
          isFull={isFull}
          change={change}
          onEdit={() => setEditing(true)}
        />
      </tr>
      {hasBelow(below) && (
        <tr role="row" className="below">
          <LineBelow {...below} change={change} onDone={() => setEditing(false)} />
        </tr>
      )}
    </tbody>
  )
}
