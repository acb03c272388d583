import { Link } from 'wouter'
import type { BatchLine, BatchStep } from '#web/client/use-batch.ts'
import { claimHref } from '#web/format/claim.ts'
import { onScale } from '#web/format/mass.ts'
import { sourceWords } from '#web/format/source.ts'
import { text } from '#web/text/text.ts'
import { Said, useSaid } from './spoken.tsx'

interface Props {
  step: BatchStep
  lines: readonly BatchLine[]
  step_g: number
  waitsFor: readonly number[]
  nameOf: (line: string) => string
  isTicked: boolean
  onTick: () => void
}

type Because = BatchStep['because']

/** Where a figure comes from, in a word: a record, the recipe, or usual practice. */
function originOf(because: Because): string {
  const words = text.batch.steps
  const origins = [
    because.some(({ claim }) => claim !== undefined) ? words.claimed : '',
    because.some(({ from }) => from === 'recipe') ? words.stated : '',
    because.some(({ from }) => from === 'practice') ? words.practice : '',
  ].filter((word) => word !== '')
  return origins.length > 0 ? origins.join(', ') : words.claimed
}

function Figures({ step, waitsFor }: Pick<Props, 'step' | 'waitsFor'>) {
  const { temp_c, time } = step
  const words = text.batch.steps
  if (!temp_c && !time && waitsFor.length === 0) return null
  return (
    <p className="figures">
      {temp_c && (
        <span>
          <b>{words.temp(temp_c)}</b> <small>{originOf(temp_c.because)}</small>
        </span>
      )}
      {time && (
        <span>
          <b>{words.time(time.min, time.max, time.unit)}</b> <small>{originOf(time.because)}</small>
        </span>
      )}
      {waitsFor.length > 0 && <small>{words.after(waitsFor.join(', '))}</small>}
    </p>
  )
}

function Why({ step }: { step: BatchStep }) {
  const all: Because = [...step.because, ...(step.temp_c?.because ?? []), ...(step.time?.because ?? [])]
  return (
    <details className="why">
      <summary>{text.batch.steps.why}</summary>
      <p>
        <Said>{step.why}.</Said>
      </p>
      <ul>
        {all.map(({ fact, claim }, at) => {
          const href = claim === undefined ? null : claimHref(claim)
          return (
            <li key={`${fact}${at}`}>
              <Said>{href ? <Link href={href}>{fact}</Link> : fact}</Said>
            </li>
          )
        })}
      </ul>
      <p className="remark">{step.sources.map(sourceWords).join(', ')}</p>
    </details>
  )
}

/** Lines that go in at this step, with what was weighed of them for it. */
function Adds({ step, lines, step_g, nameOf }: Pick<Props, 'step' | 'lines' | 'step_g' | 'nameOf'>) {
  if (step.adds.length === 0) return null
  const parts = step.adds.map((key) => {
    const portion = lines.find(({ line }) => line === key)?.portions.find((one) => one.step === step.id)
    return `${nameOf(key)} ${onScale(portion?.weigh_g ?? 0, step_g)}\u00a0g`
  })
  return (
    <p className="adds">
      {text.batch.steps.adds} <b>{parts.join(', ')}</b>
    </p>
  )
}

/** One step: what to do, how hot, how long, what goes in, what can hurt; why, when opened. */
export function BatchStepItem({ step, lines, step_g, waitsFor, nameOf, isTicked, onTick }: Props) {
  const words = text.batch.steps
  const said = useSaid()
  return (
    <li className="step" data-ticked={isTicked || undefined}>
      <h3>
        <input type="checkbox" checked={isTicked} aria-label={words.doneOf(step.title)} onChange={onTick} />
        <span {...said}>{step.title}</span>
      </h3>
      <Figures step={step} waitsFor={waitsFor} />
      <Adds step={step} lines={lines} step_g={step_g} nameOf={nameOf} />
      <p {...said}>{step.text}</p>
      {step.holds_g !== undefined && <p>{words.holds(onScale(step.holds_g, step_g))}</p>}
      {step.cautions.length > 0 && (
        <ul className="hazards" aria-label={words.caution}>
          {step.cautions.map((caution) => (
            <li key={caution} {...said}>
              {caution}
            </li>
          ))}
        </ul>
      )}
      <Why step={step} />
    </li>
  )
}
