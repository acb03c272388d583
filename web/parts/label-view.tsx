import type { LabelReply } from '#web/client/use-label.ts'
import { useLabels } from '#web/client/use-labels.ts'
import { label as T } from '#web/text/label.ts'
import { Findings } from './findings.tsx'
import { LabelAllergens } from './label-allergens.tsx'
import { LabelList } from './label-list.tsx'
import { LabelPositions } from './label-positions.tsx'
import { LabelQuestions } from './label-questions.tsx'
import { Said } from './spoken.tsx'

/** Words that the law prescribes. */
function Warnings({ warnings }: { warnings: readonly string[] }) {
  return (
    <section className="card" aria-labelledby="label-warnings-title">
      <h2 id="label-warnings-title">{T.warnings.title}</h2>
      {warnings.length === 0 ? (
        <p>{T.warnings.none}</p>
      ) : (
        <ul className="label-words">
          {warnings.map((words) => (
            <li key={words}>
              <Said>{words}</Said>
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

/** How the list of this market is made. */
function Rules({ rules }: Pick<LabelReply, 'rules'>) {
  if (rules.length === 0) return null
  return (
    <details className="card why">
      <summary>{T.rules.title}</summary>
      <ul>
        {rules.map(({ text, sources }) => (
          <li key={text}>
            <Said>{text}</Said> <small>{sources.join(', ')}</small>
          </li>
        ))}
      </ul>
    </details>
  )
}

/** All that the label needs: the list first, then what stands behind it and what is open. */
export function LabelView({ reply, old }: { reply: LabelReply; old: boolean }) {
  const ids = [...new Set([...reply.positions, ...reply.allergens].flatMap(({ from }) => from))].sort()
  const labelOf = useLabels(ids)
  return (
    <div className={old ? 'dim' : undefined} aria-busy={old}>
      {old && (
        <p className="hidden" role="status">
          {T.old}
        </p>
      )}
      <LabelList text={reply.text} />
      <Warnings warnings={reply.warnings} />
      <LabelQuestions questions={reply.questions} />
      <LabelAllergens allergens={reply.allergens} labelOf={labelOf} />
      <LabelPositions positions={reply.positions} labelOf={labelOf} />
      <section className="card" aria-labelledby="label-findings-title">
        <h2 id="label-findings-title">{T.findings.title}</h2>
        {reply.findings.length === 0 ? <p>{T.findings.none}</p> : <Findings findings={reply.findings} fold={false} />}
        <h3>{T.findings.notCovered}</h3>
        <p className="remark">
          {reply.notCovered.map(({ list, why }) => (
            <span key={list} title={why}>
              <Said>{list}</Said>.{' '}
            </span>
          ))}
        </p>
      </section>
      <Rules rules={reply.rules} />
    </div>
  )
}
