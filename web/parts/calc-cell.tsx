import { useId } from 'react'
import type { CellField } from '#web/calculations/form-fields.ts'
import { unitOfName } from '#web/format/unit.ts'
import { calculations as T } from '#web/text/calculations.ts'

export interface Remark {
  says: string
  /** names to take instead */
  nearest: readonly string[]
}

interface Props {
  field: CellField
  name: string
  /** what it is called where the field has no name of its own */
  label?: string
  value: string
  remark?: Remark | undefined
  /** record that the name was read as */
  meant?: string | undefined
  onChange: (value: string) => void
}

const hintOf = ({ key, kind, says, optional }: CellField): string =>
  [says, kind === 'oil' || key === 'acid' ? T.hint(key) : '', optional ? T.optional : '']
    .filter((one) => one !== undefined && one !== '')
    .join('; ')

function Remarks({ id, remark, onTake }: { id: string; remark: Remark; onTake: (name: string) => void }) {
  return (
    <div className="calc-remark">
      <small id={id} className="bad">
        {remark.says}
      </small>
      {remark.nearest.length > 0 && (
        <span className="calc-nearest">
          <small>{T.nearest}</small>
          {remark.nearest.slice(0, 4).map((one) => (
            <button key={one} type="button" className="quiet" onClick={() => onTake(one)}>
              {one.replaceAll('-', ' ')}
            </button>
          ))}
        </span>
      )}
    </div>
  )
}

/** One field of a calculation, with its unit, what is meant, and what is wrong with it. */
export function CalcCell({ field, name, label, value, remark, meant, onChange }: Props) {
  const id = useId()
  const hint = meant === undefined || field.kind !== 'oil' ? hintOf(field) : T.meant(meant)
  const described = [hint && `${id}-hint`, remark && `${id}-bad`].filter(Boolean).join(' ')
  const common = {
    id,
    value,
    'aria-invalid': remark ? true : undefined,
    'aria-describedby': described === '' ? undefined : described,
  }
  return (
    <div className="field" data-kind={field.kind}>
      <label htmlFor={id}>{label ?? T.withUnit(T.label(field.key, name), unitOfName(field.key))}</label>
      {field.kind === 'choice' ? (
        <select {...common} onChange={(event) => onChange(event.target.value)}>
          {field.choices.map((one) => (
            <option key={one} value={one}>
              {T.choice(one)}
            </option>
          ))}
        </select>
      ) : (
        <input
          {...common}
          className={field.kind === 'number' ? 'number' : undefined}
          inputMode={field.kind === 'number' ? 'decimal' : undefined}
          autoComplete="off"
          maxLength={field.longest}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
      {hint !== '' && <small id={`${id}-hint`}>{hint}</small>}
      {remark && <Remarks id={`${id}-bad`} remark={remark} onTake={onChange} />}
    </div>
  )
}
