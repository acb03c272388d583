import { useState } from 'react'
import { usePhAdjust } from '#web/client/use-ph-adjust.ts'
import type { PhAdjustReply, PhWay } from '#web/client/use-ph-adjust.ts'
import { readable } from '#web/client/use-labels.ts'
import { rangeText, upTo } from '#web/format/number.ts'
import { figureText } from '#web/format/figure.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { working } from '#web/text/working.ts'
import { adjustBody, CalcAdjustForm } from './calc-adjust-form.tsx'
import type { AdjustInputs } from './calc-adjust-form.tsx'
import { CalcTitration } from './calc-titration.tsx'
import { Failed, Loading } from './states.tsx'
import { InEnglish, Said, Spoken } from './spoken.tsx'

const T = working.adjust
const USUAL = { target_ph: 5, batch_g: 100, temp_c: 25 }

const List = ({ title, items }: { title: string; items: readonly string[] }) =>
  items.length === 0 ? null : (
    <>
      <h4>{title}</h4>
      <ul>
        {items.map((one) => (
          <li key={one}>
            <Said>{one}</Said>
          </li>
        ))}
      </ul>
    </>
  )

function Way({ way }: { way: PhWay }) {
  const { dose_g, likely_g, still_g, steps } = way
  return (
    <section className="way" aria-label={T.ways[way.way]}>
      <h3>
        {T.ways[way.way]} <small>{T.verdicts[way.verdict]}</small>
      </h3>
      <dl className="calc-values">
        {dose_g && (
          <div>
            <dt>{T.dose}</dt>
            <dd>
              <strong>{T.grams(dose_g)}</strong> {likely_g !== null && T.likely(figureText(likely_g, 3))}
            </dd>
          </div>
        )}
        {still_g && (
          <div>
            <dt>{T.still}</dt>
            <dd>
              <strong>{T.grams(still_g)}</strong>
            </dd>
          </div>
        )}
      </dl>
      <p>
        <Said>{way.uncertainty}</Said>
      </p>
      {steps.length > 0 && (
        <>
          <h4>{T.steps}</h4>
          <ol>
            {steps.map(({ add_g, of, then }, at) => (
              <li key={at}>
                <strong>{T.step(figureText(add_g, 3), of)}</strong> <Said>{then}</Said>.
              </li>
            ))}
          </ol>
        </>
      )}
      <List title={T.unknown} items={way.unknown.map(({ says }) => says.replace(/^with: /, ''))} />
      <List title={T.because} items={way.because.map(({ fact }) => fact)} />
    </section>
  )
}

function Reply({ reply }: { reply: PhAdjustReply }) {
  const { start, with: added, ways, window, dilutionTest, warnings, cautions } = reply
  const objections = window.objections.map(({ inci, kind, window: own, distance_ph }) =>
    working.window.objects(readable(inci), working.window.kind[kind], rangeText(own), upTo(distance_ph, 2)),
  )
  return (
    <>
      {cautions.length > 0 && (
        <section className="caution" aria-labelledby="adjust-caution">
          <h3 id="adjust-caution">{T.cautions}</h3>
          <ul>
            {cautions.map((one) => (
              <li key={one}>
                <Said>{one}</Said>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p role="status">
        {start === null ? T.noStart : `${T.start[start.from](upTo(start.ph, 2))}.`}{' '}
        {added === null ? T.noAddition : `${T.addition(readable(added.inci), added.strength_percent, added.proposed)}.`}
      </p>
      <List title={T.objections} items={objections} />
      <div className="ways">
        {ways.map((way) => (
          <Way key={way.way} way={way} />
        ))}
      </div>
      {dilutionTest && (
        <>
          <h4>{T.dilution}</h4>
          <p>
            <Said>{dilutionTest.text}</Said>
          </p>
        </>
      )}
      <List title={T.warnings} items={warnings} />
    </>
  )
}

/** A dose of acid or base for a pH: form, reply in steps, and the curve behind it. */
export function CalcAdjust({ formula, batch_g }: { formula: Formula; batch_g: number | null }) {
  const [inputs, setInputs] = useState<AdjustInputs>({
    batch_g: batch_g ?? USUAL.batch_g,
    target_ph: USUAL.target_ph,
    with: '',
    strength_percent: null,
    temp_c: USUAL.temp_c,
    diluted: null,
    meter: 'meter',
    readings: [],
  })
  const body = adjustBody(formula, inputs)
  const answer = usePhAdjust(body)
  const reply = answer.state === 'ready' ? answer.data : null
  return (
    <section className="card" id="adjust" aria-labelledby="adjust-title">
      <h2 id="adjust-title">{T.title}</h2>
      <p>{T.lead}</p>
      <CalcAdjustForm inputs={inputs} onChange={(change) => setInputs((now) => ({ ...now, ...change }))} />
      {body === null && <p role="status">{T.waits}</p>}
      {body !== null && (answer.state === 'loading' || answer.state === 'idle') && <Loading>{T.loading}</Loading>}
      {body !== null && answer.state === 'failed' && <Failed failure={answer} />}
      {body !== null && reply && (
        <>
          {answer.state === 'ready' && answer.old && <p className="remark">{T.old}</p>}
          <Spoken by="POST /api/ph/adjust">
            <InEnglish by="POST /api/ph/adjust" />
            <Reply reply={reply} />
          </Spoken>
          {answer.state === 'ready' && !answer.old && <CalcTitration body={body} reply={reply} />}
        </>
      )}
    </section>
  )
}
