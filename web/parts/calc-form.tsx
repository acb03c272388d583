import { rowsAt, textAt } from '#web/calculations/form-values.ts'
import type { Values } from '#web/calculations/form-values.ts'
import type { Field } from '#web/calculations/form-fields.ts'
import { calculations as T } from '#web/text/calculations.ts'
import { CalcCell } from './calc-cell.tsx'
import type { Remark } from './calc-cell.tsx'
import { CalcRows } from './calc-rows.tsx'

interface Props {
  name: string
  fields: readonly Field[]
  values: Values
  remarkAt: (path: string) => Remark | undefined
  meantBy: (typed: string) => string | undefined
  onChange: (values: Values) => void
  onExample?: (() => void) | undefined
}

/** The figures of one calculation; each change goes to the server at once, so there is nothing to send. */
export function CalcForm({ name, fields, values, remarkAt, meantBy, onChange, onExample }: Props) {
  return (
    <section className="card calc-form" aria-labelledby="calc-form-title">
      <h2 id="calc-form-title">{T.form}</h2>
      <p className="remark">{T.formHint}</p>
      <div className="calc-fields">
        {fields.map((field) =>
          field.kind === 'rows' ? (
            <CalcRows
              key={field.key}
              field={field}
              name={name}
              rows={rowsAt(values, field.key)}
              remarkAt={remarkAt}
              meantBy={meantBy}
              onChange={(rows) => onChange({ ...values, [field.key]: rows })}
            />
          ) : (
            <CalcCell
              key={field.key}
              field={field}
              name={name}
              value={textAt(values, field.key)}
              remark={remarkAt(field.key)}
              meant={meantBy(textAt(values, field.key))}
              onChange={(value) => onChange({ ...values, [field.key]: value })}
            />
          ),
        )}
      </div>
      {onExample && (
        <button type="button" onClick={onExample}>
          {T.example}
        </button>
      )}
    </section>
  )
}
