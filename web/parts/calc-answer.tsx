import type { WorkedReply } from '#web/client/use-calculate.ts'
import { figureText } from '#web/format/figure.ts'
import { isNoSource, sourceWords } from '#web/format/source.ts'
import { sourceHref } from '#web/format/source-link.ts'
import { unitOfName } from '#web/format/unit.ts'
import { calculations as T } from '#web/text/calculations.ts'
import { Said } from './spoken.tsx'

interface Props {
  name: string
  reply: WorkedReply
  old: boolean
}

type Cited = WorkedReply['cited'][number]

/** A source with title and place; a link where its place is an address. */
export function CalcSource({ source }: { source: Cited }) {
  const href = sourceHref(source.locator)
  if (isNoSource(source.id)) return <>{sourceWords(source.id)}</>
  return (
    <>
      {href === null ? (
        source.title
      ) : (
        <a href={href} rel="noreferrer external">
          {source.title}
        </a>
      )}
      {source.locator !== '' && <small> {source.locator}</small>}
    </>
  )
}

function Steps({ steps }: { steps: WorkedReply['steps'] }) {
  return (
    <ol className="calc-steps">
      {steps.map(({ text, expression, value, unit }, at) => (
        <li key={at}>
          <span className="calc-step-text">
            <Said>{text}</Said>
          </span>
          <span className="calc-expression">
            <Said>{expression}</Said>
          </span>
          <span className="calc-gives">
            <small>{T.gives}</small> <strong>{figureText(value)}</strong>
            {unit !== '' && unit !== '-' && ` ${unit}`}
          </span>
        </li>
      ))}
    </ol>
  )
}

/** What came out, how, where it holds and who says so. */
export function CalcAnswer({ name, reply, old }: Props) {
  return (
    <>
      <div role="status" aria-busy={old}>
        <dl className="calc-values">
          {Object.entries(reply.values).map(([key, value]) => (
            <div key={key}>
              <dt>{T.result(key, name)}</dt>
              <dd>
                <strong>{figureText(value)}</strong> {unitOfName(key)}
              </dd>
            </div>
          ))}
        </dl>
      </div>
      {old && <p className="remark">{T.old}</p>}
      <h3>{T.steps}</h3>
      <Steps steps={reply.steps} />
      <h3>{T.range}</h3>
      <p>
        <Said>{reply.range}</Said>
      </p>
      <h3>{T.sources}</h3>
      <ul className="calc-sources">
        {reply.cited.map((source) => (
          <li key={source.id}>
            <CalcSource source={source} />
          </li>
        ))}
      </ul>
    </>
  )
}
