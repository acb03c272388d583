import { useEffect, useId, useState } from 'react'
import { useDebounced } from '#web/client/use-debounced.ts'
import { explorer } from '#web/text/explorer.ts'
import type { Holding } from './holds.ts'
import { relationWords } from './names.ts'
import { RELATIONS, USUAL } from './relations.ts'
import { HEAT_C, PH, toggled } from './state.ts'
import type { ExplorerState } from './state.ts'

const T = explorer.filters
const WHILE_SLIDING_MS = 150

interface SliderProps {
  label: string
  value: number | null
  range: { min: number; max: number; step: number; usual: number }
  words: (value: number) => string
  onChange: (value: number | null) => void
}

/** A condition that can be left out: a box to ask for it, a slider to set it. */
function Slider({ label, value, range, words, onChange }: SliderProps) {
  const id = useId()
  const [draft, setDraft] = useState(value ?? range.usual)
  const settled = useDebounced(draft, WHILE_SLIDING_MS)
  useEffect(() => {
    if (value !== null) setDraft(value)
  }, [value])
  useEffect(() => {
    if (value !== null && settled !== value) onChange(settled)
    // Only a slider that has come to rest is taken over.
  }, [settled])
  return (
    <div className="explorer-slider">
      <label className="tick">
        <input type="checkbox" checked={value !== null} onChange={() => onChange(value === null ? draft : null)} />
        {label}
      </label>
      {value !== null && (
        <div className="explorer-range">
          <input
            id={id}
            type="range"
            aria-label={label}
            min={range.min}
            max={range.max}
            step={range.step}
            value={draft}
            aria-valuetext={words(draft)}
            onChange={(event) => setDraft(Number(event.target.value))}
          />
          <output htmlFor={id}>{words(draft)}</output>
        </div>
      )}
    </div>
  )
}

interface Props {
  state: ExplorerState
  states: readonly Holding[]
  onChange: (change: Partial<ExplorerState>) => void
}

const countOf = (states: readonly Holding[], one: Holding): number => states.filter((state) => state === one).length

/** Which relations are shown, and at which pH and heat things are looked at. */
export function Filters({ state, states, onChange }: Props) {
  const { relations, ph, heat_c, whole } = state
  const choices = whole === null ? RELATIONS : USUAL
  return (
    <details
      className="card explorer-filters"
      open={ph !== null || heat_c !== null || relations.length !== USUAL.length}
    >
      <summary>{T.title}</summary>
      <div className="explorer-sliders">
        <Slider label={T.ph} value={ph} range={PH} words={T.phValue} onChange={(value) => onChange({ ph: value })} />
        <Slider
          label={T.heat}
          value={heat_c}
          range={HEAT_C}
          words={T.heatValue}
          onChange={(value) => onChange({ heat_c: value })}
        />
      </div>
      {(ph !== null || heat_c !== null) && (
        <p className="remark" role="status">
          {T.counts(countOf(states, 'holds'), countOf(states, 'fails'), countOf(states, 'unknown'))} {T.hint}
        </p>
      )}
      <fieldset className="ticks">
        <legend>{T.relations}</legend>
        {choices.map((relation) => (
          <label key={relation} className="tick">
            <input
              type="checkbox"
              checked={relations.includes(relation)}
              onChange={() =>
                onChange({ relations: RELATIONS.filter((one) => toggled(relations, relation).includes(one)) })
              }
            />
            {relationWords(relation, 'out')}
          </label>
        ))}
      </fieldset>
      <p className="row">
        <button type="button" className="quiet" onClick={() => onChange({ relations: [...USUAL] })}>
          {T.all}
        </button>
        <button type="button" className="quiet" onClick={() => onChange({ relations: [] })}>
          {T.none}
        </button>
      </p>
    </details>
  )
}
