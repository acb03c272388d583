import { useEffect, useRef } from 'react'
import { cellPath } from '#web/calculations/form-values.ts'
import type { Row } from '#web/calculations/form-values.ts'
import type { RowsField } from '#web/calculations/form-fields.ts'
import { calculations as T } from '#web/text/calculations.ts'
import { CalcCell } from './calc-cell.tsx'
import type { Remark } from './calc-cell.tsx'

interface Props {
  field: RowsField
  name: string
  rows: readonly Row[]
  remarkAt: (path: string) => Remark | undefined
  meantBy: (typed: string) => string | undefined
  onChange: (rows: readonly Row[]) => void
}

/** A list of like things: a row each, to be added and taken out. The focus goes to a new row, and stays near one that went. */
export function CalcRows({ field, name, rows, remarkAt, meantBy, onChange }: Props) {
  const label = T.label(field.key, name)
  const own = remarkAt(field.key)
  const list = useRef<HTMLFieldSetElement>(null)
  const before = useRef(rows.length)
  useEffect(() => {
    const isMine = list.current?.contains(document.activeElement) || document.activeElement === document.body
    if (rows.length > before.current && isMine) {
      list.current?.querySelector<HTMLElement>('.calc-row:last-of-type input')?.focus()
    } else if (rows.length < before.current && isMine) {
      list.current?.querySelector<HTMLElement>('.calc-add')?.focus()
    }
    before.current = rows.length
  }, [rows.length])
  const change = (at: number, key: string, value: string) =>
    onChange(rows.map((row, index) => (index === at ? { ...row, [key]: value } : row)))
  return (
    <fieldset className="calc-rows" ref={list}>
      <legend>
        {label}
        {field.optional && <small> ({T.optional})</small>}
      </legend>
      {field.says !== undefined && <small>{field.says}</small>}
      {rows.length === 0 && <p className="remark">{T.noRows}</p>}
      {rows.map((row, at) => (
        <div key={at} className="calc-row" role="group" aria-label={T.row(label, at + 1)}>
          {field.cells.map((cell) => (
            <CalcCell
              key={cell.key}
              field={cell}
              name={name}
              {...(cell.key === '' && { label: T.row(label, at + 1) })}
              value={row[cell.key] ?? ''}
              remark={remarkAt(cellPath(field.key, at, cell.key))}
              meant={meantBy(row[cell.key] ?? '')}
              onChange={(value) => change(at, cell.key, value)}
            />
          ))}
          {rows.length > field.least && (
            <button
              type="button"
              className="quiet"
              aria-label={T.remove(label, at + 1)}
              onClick={() => onChange(rows.filter((_, index) => index !== at))}
            >
              {T.removeShort}
            </button>
          )}
        </div>
      ))}
      {own && <small className="bad">{own.says}</small>}
      {rows.length < field.most && (
        <button type="button" className="calc-add" aria-label={T.addTo(label)} onClick={() => onChange([...rows, {}])}>
          {T.add}
        </button>
      )}
    </fieldset>
  )
}
