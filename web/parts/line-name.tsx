import { Link } from 'wouter'
import type { CheckReply } from '#web/client/use-check.ts'
import { readable, plainLabel } from '#web/client/use-labels.ts'
import type { BenchLine } from '#web/state/bench.ts'
import type { Standing } from '#web/state/line-view.ts'
import { text } from '#web/text/text.ts'
import { Said, Spoken } from './spoken.tsx'

export type LineReply = CheckReply['roles'][number]

/** What a person reads as the name of a line. */
export function nameOf(line: BenchLine, standing: Standing, reply: LineReply | undefined): string {
  if (standing.state !== 'known') return line.name
  const inci = standing.inci ?? reply?.inci
  return inci === undefined ? plainLabel(standing.id) : readable(inci)
}

interface Props {
  line: BenchLine
  standing: Standing
  reply: LineReply | undefined
}

function Strength({ line, reply }: Pick<Props, 'line' | 'reply'>) {
  if (line.strength_percent !== undefined) return <small>{text.recipe.strength(line.strength_percent)}</small>
  const typical = reply?.strength_percent
  if (typical === undefined || typical >= 99) return null
  return <small>{text.recipe.strengthTypical(typical)}</small>
}

/** Name with link, what was typed, strength and the remark of the name look-up. */
export function LineName({ line, standing, reply }: Props) {
  const name = nameOf(line, standing, reply)
  const isOther = standing.state === 'known' && line.name.toLowerCase() !== name.toLowerCase()
  return (
    <div className="line-name">
      {standing.state === 'known' ? (
        <Link href={`/ingredient/${standing.id}`}>{name}</Link>
      ) : (
        <strong>{line.kind === 'unread' ? line.typed : name}</strong>
      )}
      {isOther && line.typed !== '' && <small>{text.recipe.typed(line.name)}</small>}
      <Strength line={line} reply={reply} />
      {standing.state === 'known' && standing.note !== null && (
        <small className="remark">
          <Spoken by="POST /api/resolve">
            <Said>{standing.note}</Said>
          </Spoken>
        </small>
      )}
      {standing.state === 'waiting' && <small role="status">{text.ask.waiting}</small>}
      {standing.state === 'failed' && <small role="alert">{text.ask.failed}</small>}
    </div>
  )
}
