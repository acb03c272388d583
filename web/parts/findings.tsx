import type { Finding } from '#web/client/use-check.ts'
import { text } from '#web/text/text.ts'
import { FindingItem } from './finding-item.tsx'

const RANK: Record<Finding['severity'], number> = { stop: 0, warn: 1, unknown: 2, note: 3 }
const CAUTION = 'handle-with-care' // a hazard at the bench is never folded away
const keyOf = (finding: Finding): string => `${finding.rule} ${finding.about.join(' ')} ${finding.message}`

/** Findings, the gravest first; remarks are folded away when there are several. */
export function Findings({ findings, fold = true }: { findings: readonly Finding[]; fold?: boolean }) {
  const sorted = [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity])
  const isShown = ({ severity, rule }: Finding) =>
    !fold || RANK[severity] < 2 || rule === CAUTION || sorted.length === 1
  const grave = sorted.filter(isShown)
  const rest = sorted.filter((finding) => !isShown(finding))
  if (sorted.length === 0) return null
  return (
    <div className="findings">
      {grave.map((finding) => (
        <FindingItem key={keyOf(finding)} finding={finding} />
      ))}
      {rest.length > 0 && (
        <details className="more">
          <summary>{text.finding.more(rest.length, grave.length === 0)}</summary>
          {rest.map((finding) => (
            <FindingItem key={keyOf(finding)} finding={finding} />
          ))}
        </details>
      )}
    </div>
  )
}
