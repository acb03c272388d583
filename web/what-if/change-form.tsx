import { useId, useState } from 'react'
import type { FormEvent } from 'react'
import { Choice } from '#web/parts/choice.tsx'
import { NumberField } from '#web/parts/number-field.tsx'
import { useOther } from '#web/parts/use-other.ts'
import type { Other } from '#web/parts/use-other.ts'
import { Combobox } from '#web/parts/combobox.tsx'
import type { Formula } from '#web/state/to-formula.ts'
import type { RecipeChange } from '#web/client/use-what-if.ts'
import { whatIf as T } from '#web/text/what-if.ts'
import { changeOf, EMPTY_CHANGE } from './draft.ts'
import type { ChangeDraft, ChangeKind } from './draft.ts'

interface LineProps {
  formula: Formula
  value: string
  labelOf: (id: string) => string
  onChange: (line: string) => void
}

/** Which line the change is about. */
function LineField({ formula, value, labelOf, onChange }: LineProps) {
  const id = useId()
  const ids = [...new Set(formula.lines.map(({ ingredient }) => ingredient))]
  return (
    <div className="field">
      <label htmlFor={id}>{T.line}</label>
      <select id={id} value={value} onChange={({ target }) => onChange(target.value)}>
        <option value="">…</option>
        {ids.map((one) => (
          <option key={one} value={one}>
            {labelOf(one)}
          </option>
        ))}
      </select>
    </div>
  )
}

const HAS_LINE: readonly ChangeKind[] = ['level', 'remove', 'replace']
const HAS_OTHER: readonly ChangeKind[] = ['replace', 'add']
const HAS_SHARE: readonly ChangeKind[] = ['level', 'add', 'replace']

interface FieldsProps extends Pick<Props, 'formula' | 'labelOf'> {
  draft: ChangeDraft
  other: Other
  set: (change: Partial<ChangeDraft>) => void
}

/** The fields that the chosen kind asks for. */
function Fields({ draft, other, set, formula, labelOf }: FieldsProps) {
  const { kind, ph, hottest_c, line, share_percent } = draft
  return (
    <div className="what-if-fields">
      {kind === 'ph' && <NumberField label={T.ph} value={ph} min={0} max={14} onChange={(one) => set({ ph: one })} />}
      {kind === 'hottest_c' && (
        <NumberField label={T.heat} value={hottest_c} min={0} max={250} onChange={(one) => set({ hottest_c: one })} />
      )}
      {HAS_LINE.includes(kind) && (
        <LineField formula={formula} value={line} labelOf={labelOf} onChange={(one) => set({ line: one })} />
      )}
      {HAS_OTHER.includes(kind) && (
        <Combobox
          label={T.by}
          typed={other.typed}
          onType={other.onType}
          onPick={other.onPick}
          onText={other.onText}
          {...(other.remark !== '' && { hint: other.remark })}
        />
      )}
      {HAS_SHARE.includes(kind) && (
        <NumberField
          label={T.share}
          value={share_percent}
          min={0}
          max={100}
          over
          onChange={(one) => set({ share_percent: one })}
        />
      )}
    </div>
  )
}

interface Props {
  formula: Formula
  labelOf: (id: string) => string
  isBusy: boolean
  onAsk: (change: RecipeChange) => void
}

/** One change of the recipe, of a kind that the person chooses. */
export function ChangeForm({ formula, labelOf, isBusy, onAsk }: Props) {
  const [draft, setDraft] = useState<ChangeDraft>(EMPTY_CHANGE)
  const [isUnfinished, setUnfinished] = useState(false)
  const other = useOther()
  const set = (change: Partial<ChangeDraft>) => {
    setUnfinished(false)
    setDraft((now) => ({ ...now, ...change }))
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const change = changeOf({ ...draft, other: other.id })
    setUnfinished(change === null)
    if (change && !isBusy) onAsk(change)
  }
  return (
    <form className="card what-if-form" onSubmit={submit} noValidate>
      <Choice
        legend={T.change}
        name="what-if-kind"
        value={draft.kind}
        choices={T.kinds}
        onChange={(kind) => set({ kind })}
      />
      <Fields draft={draft} other={other} set={set} formula={formula} labelOf={labelOf} />
      <button type="submit" className="main" aria-disabled={isBusy}>
        {T.ask}
      </button>
      <p role="status">{isUnfinished ? T.unfinished : isBusy ? T.asking : ''}</p>
    </form>
  )
}
