import { Link } from 'wouter'
import { byTopic } from '#web/calculations/topics.ts'
import type { CalculationShort } from '#web/client/use-calculations.ts'
import { useCalculations } from '#web/client/use-calculations.ts'
import { useTitle } from '#web/client/use-title.ts'
import { CalcCaution } from '#web/parts/calc-caution.tsx'
import { CalcOne } from '#web/parts/calc-one.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { calculations as T } from '#web/text/calculations.ts'
import '#web/styles/calculations.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

function Topics({ calculations }: { calculations: readonly CalculationShort[] }) {
  return (
    <div className="calc-topics">
      {byTopic(calculations).map(({ topic, calculations: own }) => (
        <section key={topic} className="card" aria-labelledby={`topic-${topic}`}>
          <h2 id={`topic-${topic}`}>{T.topics[topic]}</h2>
          <ul>
            {own.map(({ name, title }) => (
              <li key={name}>
                <Link href={`/calculation/${name}`}>{title}</Link>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <section className="card" aria-labelledby="topic-also">
        <h2 id="topic-also">{T.also}</h2>
        <ul>
          <li>
            <Link href="/working">{T.toWorking}</Link>
          </li>
          <li>
            <Link href="/compare-oils">{T.toOils}</Link>
          </li>
        </ul>
      </section>
    </div>
  )
}

/** All calculations by topic. */
export function CalculationsPage() {
  useTitle(T.title)
  const reply = useCalculations()
  return (
    <div className="page">
      <h1>{T.title}</h1>
      <p className="lead">{T.lead}</p>
      {reply.state === 'failed' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{T.loading}</Loading>}
      {reply.state === 'ready' && (
        <Spoken by="GET /api/calculate">
          <InEnglish by="GET /api/calculate" />
          <Topics calculations={reply.data.calculations} />
        </Spoken>
      )}
    </div>
  )
}

/** One calculation with its form. */
export function CalculationPage({ name }: { name: string }) {
  const reply = useCalculations()
  const one = reply.state === 'ready' ? reply.data.calculations.find((other) => other.name === name) : undefined
  useTitle(one?.title ?? T.title)
  return (
    <div className="page">
      <p>
        <Link href="/calculations">{T.back}</Link>
      </p>
      {reply.state === 'failed' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{T.loading}</Loading>}
      {reply.state === 'ready' && <h1>{one ? one.title : T.unknown}</h1>}
      {one && (
        <>
          <CalcCaution name={name} />
          <Spoken by="POST /api/calculate/:name">
            <InEnglish by="POST /api/calculate/:name" />
            <CalcOne calculation={one} />
          </Spoken>
        </>
      )}
    </div>
  )
}
