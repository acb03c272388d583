import { useState } from 'react'
import type { FormEvent } from 'react'
import { useDebounced } from '#web/client/use-debounced.ts'
import { useResolve } from '#web/client/use-resolve.ts'
import { upTo } from '#web/format/number.ts'
import type { Analysis } from '#web/state/bench.ts'
import { withComplete, withFigure, withoutFigure } from '#web/state/facts.ts'
import { facts } from '#web/text/facts.ts'
import { NumberField } from './number-field.tsx'

const T = facts.analyses
const WHILE_TYPING_MS = 350

interface Props {
  analyses: readonly Analysis[]
  /** ingredients of the recipe by id */
  materials: readonly string[]
  /** names to offer for a substance */
  substances: readonly string[]
  labelOf: (id: string) => string
  onChange: (analyses: Analysis[]) => void
}

/** A new figure: material, substance, per cent. The name of the substance is looked up as any other. */
function NewFigure({ analyses, materials, substances, labelOf, onChange }: Props) {
  const [ingredient, setIngredient] = useState(materials[0] ?? '')
  const [name, setName] = useState('')
  const [percent, setPercent] = useState<number | null>(null)
  const settled = useDebounced(name.trim(), WHILE_TYPING_MS)
  const asked = useResolve(settled === '' ? [] : [settled])
  const hit = asked.state === 'ready' && settled === name.trim() ? asked.data.get(settled) : undefined
  const substance = hit?.status === 'found' ? hit.ingredient : null
  const chosen = materials.includes(ingredient) ? ingredient : (materials[0] ?? '')
  const add = (event: FormEvent) => {
    event.preventDefault()
    if (substance === null || percent === null || chosen === '') return
    onChange(withFigure(analyses, chosen, { substance, percent }))
    setName('')
    setPercent(null)
  }
  return (
    <form className="row" onSubmit={add}>
      <div className="field">
        <label htmlFor="analysis-material">{T.ingredient}</label>
        <select id="analysis-material" value={chosen} onChange={({ target }) => setIngredient(target.value)}>
          {materials.map((id) => (
            <option key={id} value={id}>
              {labelOf(id)}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="analysis-substance">{T.substance}</label>
        <input
          id="analysis-substance"
          list="analysis-substances"
          value={name}
          maxLength={200}
          autoComplete="off"
          aria-describedby="analysis-substance-hint"
          onChange={({ target }) => setName(target.value)}
        />
        <datalist id="analysis-substances">
          {substances.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
        <small id="analysis-substance-hint" role="status">
          {hit && substance === null ? T.unknown(settled) : ''}
        </small>
      </div>
      <NumberField label={T.percent} value={percent} min={0} max={100} onChange={setPercent} />
      <button type="submit" disabled={substance === null || percent === null}>
        {T.add}
      </button>
    </form>
  )
}

/** What suppliers found in raw materials: entered by hand, used in place of typical ranges. */
export function LabelAnalyses(props: Props) {
  const { analyses, materials, labelOf, onChange } = props
  const shown = analyses.filter(({ ingredient }) => materials.includes(ingredient))
  return (
    <details className="card screen-only analyses" open={shown.length > 0 ? true : undefined}>
      <summary>{T.title}</summary>
      <p className="remark">{T.lead}</p>
      <NewFigure {...props} />
      {shown.map(({ ingredient, holds, complete }) => (
        <section key={ingredient} aria-label={labelOf(ingredient)}>
          <h3>{labelOf(ingredient)}</h3>
          <ul>
            {holds.map(({ substance, percent }) => (
              <li key={substance}>
                {T.figure(labelOf(substance), upTo(percent, 4))}{' '}
                <button
                  type="button"
                  className="quiet"
                  aria-label={T.removeOf(labelOf(substance), labelOf(ingredient))}
                  onClick={() => onChange(withoutFigure(analyses, ingredient, substance))}
                >
                  {T.remove}
                </button>
              </li>
            ))}
          </ul>
          <label className="tick">
            <input
              type="checkbox"
              checked={complete === true}
              onChange={({ target }) => onChange(withComplete(analyses, ingredient, target.checked))}
            />
            {T.complete(labelOf(ingredient))}
          </label>
        </section>
      ))}
    </details>
  )
}
