import type { Question } from '#web/client/question.ts'
import type { CheckReply, Finding } from '#web/client/use-check.ts'
import type { Lacking } from '#web/state/to-formula.ts'
import { text } from '#web/text/text.ts'
import { Findings } from './findings.tsx'
import { Failed, Loading } from './states.tsx'

interface Props {
  check: Question<CheckReply>
  lacking: Lacking | null
  aside_percent: number
}

const number = (findings: readonly Finding[], ...severities: Finding['severity'][]): number =>
  findings.filter(({ severity }) => severities.includes(severity)).length

function Ready({ reply, old, aside_percent }: { reply: CheckReply; old: boolean; aside_percent: number }) {
  const { verdict, findings, form, formDerived } = reply
  const whole = findings.filter(({ about }) => about.length === 0)
  const counts = text.check.counts(
    number(findings, 'stop'),
    number(findings, 'warn'),
    number(findings, 'note', 'unknown'),
  )
  return (
    <>
      <p className="verdict" data-verdict={verdict} role="status">
        <strong>{text.check.words[verdict]}</strong>
        {counts !== '' && <span> {counts}</span>}
        {old && <small> {text.check.old}</small>}
      </p>
      <p>{text.check.explain[verdict]}</p>
      <p className="remark">{text.check.form(text.check.forms[form], formDerived)}</p>
      {aside_percent > 0 && <p className="remark">{text.check.aside(aside_percent)}</p>}
      {whole.length > 0 && (
        <>
          <h3>{text.check.whole}</h3>
          <Findings findings={whole} />
        </>
      )}
    </>
  )
}

/** The verdict in words, and what concerns the recipe as a whole. */
export function Verdict({ check, lacking, aside_percent }: Props) {
  return (
    <section className="card check" aria-labelledby="check-title">
      <h2 id="check-title">{text.check.title}</h2>
      {lacking !== null && <p role="status">{text.check.lacking[lacking]}</p>}
      {lacking === null && check.state !== 'ready' && check.state !== 'failed' && (
        <Loading>{text.check.loading}</Loading>
      )}
      {lacking === null && check.state === 'failed' && <Failed failure={check} />}
      {lacking === null && check.state === 'ready' && (
        <Ready reply={check.data} old={check.old} aside_percent={aside_percent} />
      )}
    </section>
  )
}
