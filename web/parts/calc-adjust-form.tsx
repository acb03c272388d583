import { useId } from 'react'
import type { PhAdjustBody } from '#web/client/use-ph-adjust.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { working } from '#web/text/working.ts'
import { Choice } from './choice.tsx'
import { NumberField } from './number-field.tsx'

const T = working.adjust
const MOST_READINGS = 20

export interface Reading {
  added_g: number | null
  ph: number | null
}
export interface AdjustInputs {
  batch_g: number | null
  target_ph: number | null
  with: string
  strength_percent: number | null
  temp_c: number | null
  diluted: number | null
  meter: 'meter' | 'strips'
  readings: readonly Reading[]
}

/** What goes to the server; null while batch or target is missing. A reading that is not whole stays out. */
export function adjustBody(formula: Formula, inputs: AdjustInputs): PhAdjustBody | null {
  const { batch_g, target_ph, strength_percent, temp_c, diluted, meter } = inputs
  if (batch_g === null || target_ph === null) return null
  const measured = inputs.readings.flatMap(({ added_g, ph }) =>
    added_g === null || ph === null ? [] : [{ added_g, ph }],
  )
  return {
    formula,
    batch_g,
    target_ph,
    meter,
    ...(inputs.with !== '' && { with: inputs.with }),
    ...(strength_percent !== null && { strength_percent }),
    ...(temp_c !== null && { temp_c }),
    ...(diluted !== null && { diluted }),
    ...(measured.length > 0 && { measured }),
  }
}

interface Props {
  inputs: AdjustInputs
  onChange: (change: Partial<AdjustInputs>) => void
}

function Readings({ inputs, onChange }: Props) {
  const { readings } = inputs
  const set = (at: number, change: Partial<Reading>) =>
    onChange({ readings: readings.map((one, index) => (index === at ? { ...one, ...change } : one)) })
  return (
    <fieldset className="calc-rows">
      <legend>{T.readings}</legend>
      <small>{T.readingsHint}</small>
      {readings.map(({ added_g, ph }, at) => (
        <div key={at} className="calc-row" role="group" aria-label={T.reading(at + 1)}>
          <NumberField
            label={T.added}
            value={added_g}
            min={0}
            max={1e6}
            onChange={(next) => set(at, { added_g: next })}
          />
          <NumberField label={T.read} value={ph} min={0} max={14} onChange={(next) => set(at, { ph: next })} />
          <button
            type="button"
            className="quiet"
            aria-label={T.remove(at + 1)}
            onClick={() => onChange({ readings: readings.filter((_, index) => index !== at) })}
          >
            {T.removeShort}
          </button>
        </div>
      ))}
      {readings.length < MOST_READINGS && (
        <button
          type="button"
          className="calc-add"
          onClick={() => onChange({ readings: [...readings, { added_g: readings.length === 0 ? 0 : null, ph: null }] })}
        >
          {T.addRow}
        </button>
      )}
    </fieldset>
  )
}

/** Batch, pH wanted, what is added, and what was read. */
export function CalcAdjustForm({ inputs, onChange }: Props) {
  const withId = useId()
  return (
    <div className="calc-fields">
      <NumberField
        label={T.batch}
        value={inputs.batch_g}
        min={0}
        over
        max={1e6}
        onChange={(batch_g) => onChange({ batch_g })}
      />
      <NumberField
        label={T.target}
        value={inputs.target_ph}
        min={0}
        max={14}
        onChange={(target_ph) => onChange({ target_ph })}
      />
      <div className="field">
        <label htmlFor={withId}>{T.with}</label>
        <select id={withId} value={inputs.with} onChange={(event) => onChange({ with: event.target.value })}>
          <option value="">{T.proposed}</option>
          {Object.entries(T.additives).map(([id, name]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <NumberField
        label={T.strength}
        hint={T.strengthHint}
        value={inputs.strength_percent}
        min={0}
        over
        max={100}
        onChange={(strength_percent) => onChange({ strength_percent })}
      />
      <NumberField label={T.temp} value={inputs.temp_c} min={0} max={60} onChange={(temp_c) => onChange({ temp_c })} />
      <NumberField
        label={T.diluted}
        hint={T.dilutedHint}
        value={inputs.diluted}
        min={0}
        over
        max={100}
        onChange={(diluted) => onChange({ diluted })}
      />
      <Choice
        legend={T.meter}
        name="adjust-meter"
        value={inputs.meter}
        choices={T.meters}
        onChange={(meter) => onChange({ meter })}
      />
      <Readings inputs={inputs} onChange={onChange} />
    </div>
  )
}
