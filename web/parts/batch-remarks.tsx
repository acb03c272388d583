import type { BatchRemark } from '#web/client/use-batch.ts'
import { text } from '#web/text/text.ts'
import { SeverityMark } from './severity-mark.tsx'
import { Said } from './spoken.tsx'

const RANK = { warn: 0, unknown: 1, note: 2 } as const

/** What has to be known before the first line is weighed, the gravest first. */
export function BatchRemarks({ remarks }: { remarks: readonly BatchRemark[] }) {
  const sorted = [...remarks].sort((a, b) => RANK[a.severity] - RANK[b.severity])
  return (
    <section className="card batch-remarks" aria-labelledby="batch-remarks-title">
      <h2 id="batch-remarks-title">{text.batch.remarks.title}</h2>
      {sorted.length === 0 ? (
        <p>{text.batch.remarks.none}</p>
      ) : (
        <ul className="remarks">
          {sorted.map(({ kind, severity, message, remedy, lines }) => (
            <li key={`${kind} ${lines.join()} ${message}`} data-severity={severity}>
              <SeverityMark severity={severity} /> <Said>{message}</Said>
              {remedy !== undefined && (
                <span className="remedy">
                  <Said>{remedy}</Said>.
                </span>
              )}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}
