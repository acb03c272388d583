import { rowsAt, cellPath, textAt } from './form-values.ts'
import type { Row, Values } from './form-values.ts'
import type { Field } from './form-fields.ts'

const LONGEST_VALUE = 200

/** The figures of a form as the query of an address: `ph=5`, `fats.0.share_percent=70`; an empty list is `ions=`. */
export function toQuery(fields: readonly Field[], values: Values): Record<string, string> {
  const pairs = fields.flatMap((field): [string, string][] => {
    if (field.kind !== 'rows') {
      const typed = textAt(values, field.key).trim()
      return typed === '' && field.optional ? [] : [[field.key, typed]]
    }
    const rows = rowsAt(values, field.key)
    if (rows.length === 0) return field.optional ? [] : [[field.key, '']]
    return rows.flatMap((row, at) =>
      field.cells.map(({ key }): [string, string] => [cellPath(field.key, at, key), (row[key] ?? '').trim()]),
    )
  })
  return Object.fromEntries(pairs)
}

function rowsFrom(field: Extract<Field, { kind: 'rows' }>, query: URLSearchParams): Row[] {
  const rows: Row[] = []
  for (let at = 0; at < field.most; at += 1) {
    const typed = field.cells.map(({ key }) => [key, query.get(cellPath(field.key, at, key))] as const)
    if (typed.every(([, value]) => value === null)) break
    rows.push(Object.fromEntries(typed.map(([key, value]) => [key, (value ?? '').slice(0, LONGEST_VALUE)])))
  }
  return rows
}

/** The figures that an address carries; null when it carries none of this form. */
export function fromQuery(fields: readonly Field[], query: URLSearchParams): Values | null {
  const own = fields.map(({ key }) => key)
  const isOwn = [...query.keys()].some((key) => own.includes(key.split('.')[0] ?? ''))
  if (!isOwn) return null
  return Object.fromEntries(
    fields.map((field) => [
      field.key,
      field.kind === 'rows' ? rowsFrom(field, query) : (query.get(field.key) ?? '').slice(0, LONGEST_VALUE),
    ]),
  )
}
