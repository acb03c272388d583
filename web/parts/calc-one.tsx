import { useEffect, useMemo, useState } from 'react'
import { useSearchParams } from 'wouter'
import { EXAMPLES } from '#web/calculations/examples.ts'
import { fromQuery, toQuery } from '#web/calculations/form-address.ts'
import { fieldsOf } from '#web/calculations/form-fields.ts'
import type { Field } from '#web/calculations/form-fields.ts'
import { namesIn, readForm } from '#web/calculations/form-values.ts'
import type { Read, Values } from '#web/calculations/form-values.ts'
import { refusalOf } from '#web/calculations/refusal.ts'
import type { Question } from '#web/client/question.ts'
import { useCalculate } from '#web/client/use-calculate.ts'
import type { WorkedReply } from '#web/client/use-calculate.ts'
import type { CalculationShort } from '#web/client/use-calculations.ts'
import { useDebounced } from '#web/client/use-debounced.ts'
import { useRecordIds } from '#web/client/use-calculated-ids.ts'
import { calculations as T } from '#web/text/calculations.ts'
import { CalcAnswer } from './calc-answer.tsx'
import type { Remark } from './calc-cell.tsx'
import { CalcForm } from './calc-form.tsx'
import { Failed, Loading } from './states.tsx'

const WHILE_TYPING_MS = 400

/** An empty form with the first of all choices, for a calculation without an example. */
const emptyOf = (fields: readonly Field[]): Values =>
  Object.fromEntries(
    fields.map((field) => [
      field.key,
      field.kind === 'rows' ? [] : field.kind === 'choice' ? (field.choices[0] ?? '') : '',
    ]),
  )

/** Figures that start from the address or the example, and go into the address when they stand still. */
function useFigures(name: string, fields: readonly Field[]) {
  const [params, setParams] = useSearchParams()
  const example = EXAMPLES[name]
  const [values, setValues] = useState(() => fromQuery(fields, params) ?? example ?? emptyOf(fields))
  const [isTouched, setTouched] = useState(false)
  const settled = useDebounced(values, WHILE_TYPING_MS)
  useEffect(() => {
    if (isTouched) setParams(toQuery(fields, settled), { replace: true })
    // Only figures that changed here may write into the address.
  }, [settled])
  const change = (next: Values) => {
    setTouched(true)
    setValues(next)
  }
  return { values, change, onExample: example && (() => change(example)) }
}

/** What is to be said at a field: what cannot go out, what a name can mean, what the server refuses. */
function remarksOf(read: Read, answer: Question<WorkedReply>, asked: ReadonlyMap<string, Remark>) {
  const refusal = answer.state === 'failed' && answer.code !== 'no-answer' ? refusalOf(answer.message) : null
  return (path: string, typed: string): Remark | undefined => {
    const fault = read.faults.get(path)
    if (fault) return { says: T.fault(fault), nearest: [] }
    const meaning = asked.get(typed.trim())
    if (meaning) return meaning
    return refusal !== null && refusal.path === path ? refusal : undefined
  }
}

const typedAt = (values: Values, path: string): string => {
  const [list = '', row, key = ''] = path.split('.')
  const value = values[list]
  if (typeof value === 'string' || value === undefined) return value ?? ''
  return value[Number(row)]?.[key] ?? ''
}

/** Whether a refusal stands at a field of the form, and need not be said apart. */
const standsAt = (fields: readonly Field[], values: Values, message: string): boolean => {
  const [list, row] = refusalOf(message).path.split('.')
  const field = fields.find(({ key }) => key === list)
  const rows = list === undefined ? undefined : values[list]
  return field !== undefined && (row === undefined || (Array.isArray(rows) && Number(row) < rows.length))
}

/** One calculation: figures in, answer with its steps out. */
export function CalcOne({ calculation }: { calculation: CalculationShort }) {
  const { name, input } = calculation
  const fields = useMemo(() => fieldsOf(input), [input])
  const { values, change, onExample } = useFigures(name, fields)
  const { idOf, waits, remarks, meantBy } = useRecordIds(namesIn(fields, values))
  const read = readForm(fields, values, idOf)
  const isWhole = read.faults.size === 0 && remarks.size === 0
  const answer = useCalculate(name, isWhole && !waits ? read.body : null)
  const remarkAt = remarksOf(read, answer, remarks)
  return (
    <div className="calc-two">
      <CalcForm
        name={name}
        fields={fields}
        values={values}
        meantBy={meantBy}
        remarkAt={(path) => remarkAt(path, typedAt(values, path))}
        onChange={change}
        onExample={onExample}
      />
      <section className="card calc-answer" aria-labelledby="calc-answer-title">
        <h2 id="calc-answer-title">{T.answer}</h2>
        {!isWhole && <p role="status">{T.waits}</p>}
        {isWhole && (waits || answer.state === 'loading' || answer.state === 'idle') && <Loading>{T.working}</Loading>}
        {isWhole && answer.state === 'failed' && standsAt(fields, values, answer.message) && (
          <p role="status">{T.waits}</p>
        )}
        {isWhole && answer.state === 'failed' && !standsAt(fields, values, answer.message) && (
          <Failed failure={answer} />
        )}
        {isWhole && !waits && answer.state === 'ready' && (
          <CalcAnswer name={name} reply={answer.data} old={answer.old} />
        )}
      </section>
    </div>
  )
}
