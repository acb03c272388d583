import type { Finding } from '#web/client/use-check.ts'
import type { BenchLine } from '#web/state/bench.ts'
import type { Standing } from '#web/state/line-view.ts'
import { text } from '#web/text/text.ts'
import { Findings } from './findings.tsx'
import { focusSoon, lineSelector } from './focus-soon.ts'
import type { LineActs } from './line-acts.ts'
import { LineAsk } from './line-ask.tsx'
import { LineEdit } from './line-edit.tsx'

interface Props {
  line: BenchLine
  name: string
  /** place of the line, counted from 0 */
  at: number
  standing: Standing
  findings: readonly Finding[]
  isEditing: boolean
  acts: LineActs
  onDone: () => void
}

function Unread({ line, acts }: Pick<Props, 'line' | 'acts'>) {
  return (
    <div className="ask">
      <p>{text.ask.unread}</p>
      <LineEdit line={line} onRead={acts.read} onPick={acts.pick} />
      <button type="button" className="quiet" onClick={acts.toNotes}>
        {text.ask.toNotes}
      </button>
    </div>
  )
}

/** Name and place of a line. Up and down are here for who cannot drag and has no arrow keys. */
function Edit({ line, name, at, acts, onDone }: Omit<Props, 'standing' | 'findings' | 'isEditing'>) {
  const cancel = () => {
    onDone()
    focusSoon(lineSelector(line.key, '.edit'))
  }
  return (
    <LineEdit
      line={line}
      onRead={(typed) => {
        onDone()
        acts.read(typed)
      }}
      onPick={(picked) => {
        onDone()
        acts.pick(picked)
      }}
      onCancel={cancel}
    >
      <button type="button" className="up" aria-label={text.recipe.upOf(name)} onClick={() => acts.move(at - 1, '.up')}>
        ↑ {text.recipe.up}
      </button>
      <button
        type="button"
        className="down"
        aria-label={text.recipe.downOf(name)}
        onClick={() => acts.move(at + 1, '.down')}
      >
        ↓ {text.recipe.down}
      </button>
    </LineEdit>
  )
}

/** True when something has to be said or asked under a line. */
export const hasBelow = ({
  line,
  standing,
  findings,
  isEditing,
}: Pick<Props, 'line' | 'standing' | 'findings' | 'isEditing'>): boolean =>
  isEditing ||
  line.aside ||
  line.trouble !== undefined ||
  standing.state === 'unread' ||
  standing.state === 'ask' ||
  standing.state === 'unknown' ||
  findings.length > 0

/** What belongs to a line and needs room: correction, question, trouble with the share, findings. */
export function LineBelow({ standing, findings, isEditing, ...rest }: Props) {
  const { line, acts } = rest
  return (
    <td colSpan={7} role="cell">
      {isEditing && <Edit {...rest} />}
      {line.trouble && <p className="trouble">{text.ask.trouble[line.trouble]}</p>}
      {standing.state === 'unread' && <Unread line={line} acts={acts} />}
      {(standing.state === 'ask' || standing.state === 'unknown') && (
        <LineAsk
          line={line}
          standing={standing}
          onChoose={acts.choose}
          onAside={() => acts.setAside(true)}
          onNote={acts.toNotes}
        />
      )}
      {line.aside && (
        <p className="trouble">
          {text.ask.isAside}{' '}
          <button type="button" className="quiet" onClick={() => acts.setAside(false)}>
            {text.ask.back}
          </button>
        </p>
      )}
      <Findings findings={findings} />
    </td>
  )
}
