import { readNumber } from '#web/recipe/number.ts'
import type { CellField, Field } from './form-fields.ts'

/** What stands in the fields, as typed. */
export type Row = Readonly<Record<string, string>>
export type Values = Readonly<Record<string, string | readonly Row[]>>

/** Why a field cannot go out as it stands. */
export type Fault =
  | { is: 'needed' }
  | { is: 'no-number' }
  | { is: 'no-whole' }
  | { is: 'low'; limit: number; over: boolean }
  | { is: 'high'; limit: number; under: boolean }

export interface Read {
  body: Record<string, unknown>
  /** by path: `ph`, `fats.0.share_percent` */
  faults: ReadonlyMap<string, Fault>
}

export const textAt = (values: Values, key: string): string => {
  const value = values[key]
  return typeof value === 'string' ? value : ''
}

export const rowsAt = (values: Values, key: string): readonly Row[] => {
  const value = values[key]
  return typeof value === 'string' || value === undefined ? [] : value
}

/** Path of a cell in a row; a row that is one plain text has no name of its own. */
export const cellPath = (list: string, row: number, key: string): string =>
  key === '' ? `${list}.${row}` : `${list}.${row}.${key}`

function numberFault(field: CellField, value: number | null): Fault | null {
  if (value === null) return { is: 'no-number' }
  if (field.whole && !Number.isInteger(value)) return { is: 'no-whole' }
  const { min, max, over = false, under = false } = field
  if (min !== undefined && (over ? value <= min : value < min)) return { is: 'low', limit: min, over }
  if (max !== undefined && (under ? value >= max : value > max)) return { is: 'high', limit: max, under }
  return null
}

type Cell = { value: unknown } | { fault: Fault } | null

/** One field as it goes out; null: nothing to send. `idOf` turns a typed name into the id of its record. */
function readCell(field: CellField, typed: string, idOf: (name: string) => string): Cell {
  const bare = typed.trim()
  if (bare === '') return field.optional ? null : { fault: { is: 'needed' } }
  if (field.kind === 'oil') return { value: idOf(bare) }
  if (field.kind !== 'number') return { value: bare }
  const value = readNumber(bare.replace('−', '-'))
  const fault = numberFault(field, value)
  return fault ? { fault } : { value }
}

/** Reads the form; the body is of use only when there are no faults. */
export function readForm(fields: readonly Field[], values: Values, idOf: (name: string) => string): Read {
  const faults = new Map<string, Fault>()
  const take = (cell: Cell, path: string, put: (value: unknown) => void) => {
    if (cell === null) return
    if ('fault' in cell) faults.set(path, cell.fault)
    else put(cell.value)
  }
  const body: Record<string, unknown> = {}
  for (const field of fields) {
    if (field.kind !== 'rows') {
      take(readCell(field, textAt(values, field.key), idOf), field.key, (value) => (body[field.key] = value))
      continue
    }
    const rows = rowsAt(values, field.key)
    if (rows.length === 0 && field.optional) continue
    if (rows.length < field.least) faults.set(field.key, { is: 'needed' })
    body[field.key] = rows.map((row, at) => {
      const sent: Record<string, unknown> = {}
      for (const cell of field.cells) {
        const path = cellPath(field.key, at, cell.key)
        take(readCell(cell, row[cell.key] ?? '', idOf), path, (value) => (sent[cell.key] = value))
      }
      return field.cells[0]?.key === '' ? sent[''] : sent
    })
  }
  return { body, faults }
}

/** The names typed where a record is meant. */
export function namesIn(fields: readonly Field[], values: Values): string[] {
  return fields.flatMap((field) => {
    if (field.kind === 'oil') return [textAt(values, field.key)]
    if (field.kind !== 'rows') return []
    const named = field.cells.filter(({ kind }) => kind === 'oil')
    return rowsAt(values, field.key).flatMap((row) => named.map(({ key }) => row[key] ?? ''))
  })
}
