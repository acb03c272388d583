import { Link } from 'wouter'
import type { BatchReply } from '#web/client/use-batch.ts'
import { readable } from '#web/client/use-labels.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import { useTicks } from '#web/state/batch-ticks.ts'
import { text } from '#web/text/text.ts'
import { BatchLooks } from './batch-looks.tsx'
import { BatchRemarks } from './batch-remarks.tsx'
import { BatchSteps } from './batch-steps.tsx'
import { BatchWeigh } from './batch-weigh.tsx'
import { Findings } from './findings.tsx'
import { dayText } from '#web/format/day.ts'

interface Props {
  reply: BatchReply
  old: boolean
  typed: ReadonlyMap<string, string>
  inputs: BatchInputs
  onInputs: (next: Partial<BatchInputs>) => void
}

/** What makes this sheet this one: another weight is another sheet, and nothing of it is ticked. */
const signOf = ({ lines, order }: BatchReply): string =>
  `${order.join()} ${lines.map(({ line, weigh_g }) => `${line} ${weigh_g}`).join()}`

/** Facts of the batch in one line. */
function HeadLine({ reply }: { reply: BatchReply }) {
  const { batch_g, weighed_g, step_g, form, date, batchCode } = reply
  const words = text.batch.line
  const parts = [
    words.form(text.check.forms[form]),
    words.size(batch_g),
    weighed_g === batch_g ? '' : words.weighed(weighed_g),
    words.scale(step_g),
    date === null ? '' : words.date(dayText(date)),
    batchCode === null ? '' : words.code(batchCode),
  ]
  return <p className="sheet-line">{parts.filter((part) => part !== '').join(' · ')}</p>
}

function CheckCard({ reply }: { reply: BatchReply }) {
  const grave = reply.findings.filter(({ severity }) => severity === 'stop' || severity === 'warn')
  return (
    <section className="card check" aria-labelledby="batch-check-title">
      <h2 id="batch-check-title">{text.batch.check.title}</h2>
      <p className="verdict" data-verdict={reply.verdict}>
        <strong>{text.check.words[reply.verdict]}</strong>
      </p>
      <Findings findings={grave} />
      <p className="remark screen-only">
        <Link href="/">{text.batch.check.more}</Link>
      </p>
    </section>
  )
}

/** The whole sheet: remarks, weigh table, order of work, days of looking at it again. */
export function BatchSheetView({ reply, old, typed, inputs, onInputs }: Props) {
  const ticks = useTicks(signOf(reply))
  const names = new Map(reply.lines.map(({ line, inci }) => [line, readable(inci)]))
  const nameOf = (line: string): string => names.get(line) ?? line
  return (
    <div className={old ? 'dim' : undefined} aria-busy={old}>
      {old && (
        <p className="hidden" role="status">
          {text.batch.old}
        </p>
      )}
      <HeadLine reply={reply} />
      <BatchWeigh reply={reply} ticks={ticks} nameOf={nameOf} typed={typed} inputs={inputs} onInputs={onInputs} />
      <BatchRemarks remarks={reply.remarks} />
      <BatchSteps reply={reply} ticks={ticks} nameOf={nameOf} />
      <BatchLooks looks={reply.looks} hasPh={reply.order.includes('ph')} />
      <CheckCard reply={reply} />
    </div>
  )
}
