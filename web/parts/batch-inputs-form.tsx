import { useId } from 'react'
import { LONGEST, SCALE_STEPS } from '#web/state/batch-inputs.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import { text } from '#web/text/text.ts'
import { NumberField } from './number-field.tsx'
import { upTo } from '#web/format/number.ts'

interface Props {
  batch_g: number | null
  inputs: BatchInputs
  onSize: (batch_g: number | null) => void
  onInputs: (next: Partial<BatchInputs>) => void
}

interface WordProps {
  label: string
  hint?: string
  type?: 'text' | 'date'
  value: string
  longest?: number
  onChange: (value: string) => void
}

function WordField({ label, hint, type = 'text', value, longest, onChange }: WordProps) {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type={type}
        autoComplete="off"
        value={value}
        maxLength={longest}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={(event) => onChange(event.target.value)}
      />
      {hint !== undefined && <small id={`${id}-hint`}>{hint}</small>}
    </div>
  )
}

/** Size, scale, overage, day, code and currency of this batch. */
export function BatchInputsForm({ batch_g, inputs, onSize, onInputs }: Props) {
  const scaleId = useId()
  const words = text.batch.inputs
  return (
    <section className="card batch-inputs" aria-labelledby="batch-inputs-title">
      <h2 id="batch-inputs-title">{words.title}</h2>
      <div className="batch-fields">
        <NumberField label={words.size} value={batch_g} min={0} over max={1_000_000} onChange={onSize} />
        <div className="field">
          <label htmlFor={scaleId}>{words.scale}</label>
          <select
            id={scaleId}
            value={inputs.step_g}
            onChange={(event) => onInputs({ step_g: Number(event.target.value) })}
          >
            {SCALE_STEPS.map((step_g) => (
              <option key={step_g} value={step_g}>
                {upTo(step_g, 3)}
              </option>
            ))}
          </select>
        </div>
        <NumberField
          label={words.overage}
          hint={words.overageHint}
          value={inputs.overage_percent}
          min={0}
          max={100}
          onChange={(overage_percent) => onInputs({ overage_percent })}
        />
        <WordField label={words.date} type="date" value={inputs.date} onChange={(date) => onInputs({ date })} />
        <WordField
          label={words.code}
          hint={words.codeHint}
          value={inputs.code}
          longest={LONGEST.code}
          onChange={(code) => onInputs({ code })}
        />
        <WordField
          label={words.currency}
          hint={words.currencyHint}
          value={inputs.currency}
          longest={LONGEST.currency}
          onChange={(currency) => onInputs({ currency })}
        />
      </div>
    </section>
  )
}
