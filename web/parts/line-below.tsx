import type { Finding } from '#web/client/use-check.ts'
import type { BenchLine } from '#web/state/bench.ts'
import { editLine, removeLine } from '#web/state/edit.ts'
import { rereadLine } from '#web/state/from-text.ts'
import type { Standing } from '#web/state/line-view.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/en.ts'
import { Findings } from './findings.tsx'
import { LineAsk } from './line-ask.tsx'
import { LineEdit } from './line-edit.tsx'

interface Props {
  line: BenchLine
  standing: Standing
  findings: readonly Finding[]
  isEditing: boolean
  change: BenchStore['change']
  onDone: () => void
}

const toNotes = ({ line, change }: Pick<Props, 'line' | 'change'>): void =>
  change((bench) => ({
    ...removeLine(bench, line.key),
    notes: [bench.notes, line.typed || line.name].filter((note) => note !== '').join('\n'),
  }))

function Unread({ line, change }: Pick<Props, 'line' | 'change'>) {
  return (
    <div className="ask">
      <p>{text.ask.unread}</p>
      <LineEdit line={line} onRead={(typed) => change((bench) => rereadLine(bench, line.key, typed))} />
      <button type="button" className="quiet" onClick={() => toNotes({ line, change })}>
        {text.ask.toNotes}
      </button>
    </div>
  )
}

/** True when something has to be said or asked under a line. */
export const hasBelow = ({ line, standing, findings, isEditing }: Omit<Props, 'change' | 'onDone'>): boolean =>
  isEditing ||
  line.aside ||
  line.trouble !== undefined ||
  standing.state === 'unread' ||
  standing.state === 'ask' ||
  standing.state === 'unknown' ||
  findings.length > 0

/** What belongs to a line and needs room: correction, question, trouble with the share, findings. */
export function LineBelow({ line, standing, findings, isEditing, change, onDone }: Props) {
  const setAside = (aside: boolean) => change((bench) => editLine(bench, line.key, { aside, missing: false }))
  const choose = (chosen: string) => change((bench) => editLine(bench, line.key, { chosen, aside: false }))
  const reread = (typed: string) => {
    change((bench) => rereadLine(bench, line.key, typed))
    onDone()
  }
  return (
    <td colSpan={6} role="cell">
      {isEditing && <LineEdit line={line} onRead={reread} onCancel={onDone} />}
      {line.trouble && <p className="trouble">{text.ask.trouble[line.trouble]}</p>}
      {standing.state === 'unread' && <Unread line={line} change={change} />}
      {(standing.state === 'ask' || standing.state === 'unknown') && (
        <LineAsk
          line={line}
          standing={standing}
          onChoose={choose}
          onAside={() => setAside(true)}
          onNote={() => toNotes({ line, change })}
        />
      )}
      {line.aside && (
        <p className="trouble">
          {text.ask.isAside}{' '}
          <button type="button" className="quiet" onClick={() => setAside(false)}>
            {text.ask.back}
          </button>
        </p>
      )}
      <Findings findings={findings} />
    </td>
  )
}
