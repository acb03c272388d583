import type { Finding } from '#web/client/use-check.ts'
import { text } from '#web/text/text.ts'

type Severity = Finding['severity']

const SHAPES: Record<Severity, string> = {
  stop: 'M6 1h8l5 5v8l-5 5H6l-5-5V6z',
  warn: 'M10 1.5 19 18H1z',
  note: 'M10 2a8 8 0 1 0 0 16 8 8 0 0 0 0-16z',
  unknown: 'M2 2h16v16H2z',
}
const SIGNS: Record<Severity, string> = { stop: '×', warn: '!', note: 'i', unknown: '?' }

/** Severity by shape, sign and word; colour only comes on top. */
export function SeverityMark({ severity }: { severity: Severity }) {
  return (
    <span className="severity" data-severity={severity}>
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        <path d={SHAPES[severity]} />
        <text x="10" y={severity === 'warn' ? 16 : 14.5} textAnchor="middle">
          {SIGNS[severity]}
        </text>
      </svg>
      {text.finding.severity[severity]}
    </span>
  )
}
