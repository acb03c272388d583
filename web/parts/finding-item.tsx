import { Link } from 'wouter'
import type { Finding } from '#web/client/use-check.ts'
import { claimHref } from '#web/format/claim.ts'
import { text } from '#web/text/text.ts'
import { SourceLinks } from './source-links.tsx'
import { SeverityMark } from './severity-mark.tsx'
import { Said, useSaid } from './spoken.tsx'

function Reasons({ finding }: { finding: Finding }) {
  return (
    <ul>
      {finding.because.map(({ fact, claim }, at) => {
        const href = claim === undefined ? null : claimHref(claim, finding.about[0])
        return (
          <li key={`${fact}${at}`}>
            <Said>{href ? <Link href={href}>{fact}</Link> : fact}</Said>
          </li>
        )
      })}
    </ul>
  )
}

/** One finding: what is wrong at a glance; remedy, reasons and sources when opened. */
export function FindingItem({ finding }: { finding: Finding }) {
  const said = useSaid()
  const { severity, message, remedy, because, sources, rule } = finding
  return (
    <details className="finding" data-severity={severity}>
      <summary>
        <SeverityMark severity={severity} />{' '}
        <span className="message" {...said}>
          {message}
        </span>
      </summary>
      <dl>
        {remedy !== undefined && (
          <>
            <dt>{text.finding.remedy}</dt>
            <dd {...said}>{remedy}</dd>
          </>
        )}
        {because.length > 0 && (
          <>
            <dt>{text.finding.because}</dt>
            <dd>
              <Reasons finding={finding} />
            </dd>
          </>
        )}
        {sources.length > 0 && (
          <>
            <dt>{text.finding.sources}</dt>
            <dd>
              <SourceLinks ids={sources} />
            </dd>
          </>
        )}
        <dt>{text.finding.rule}</dt>
        <dd>{rule}</dd>
      </dl>
    </details>
  )
}
