import type { LimitRow } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'

const SAYS = ['max_percent', 'prohibited', 'ph', 'condition', 'warning'] as const

const scopeKey = ({ scope, applies_from }: LimitRow): string =>
  JSON.stringify([scope.product, scope.areas, scope.not_areas, scope.form, scope.not_form, scope.only, applies_from])

/** Guards against a row that demands nothing, and against two rows of one entry that set the same case differently. */
export const limitRowSaysSomething: Lint = (_raw, { limits }) =>
  limits.flatMap(({ id, rows }) =>
    rows.flatMap((row, at) => {
      const path = `limits/${id}.yaml/rows/${at}`
      if (SAYS.every((key) => row[key] === undefined)) return [{ path, message: 'the row demands nothing' }]
      const twin = rows.findIndex(
        (other, index) =>
          index < at &&
          scopeKey(other) === scopeKey(row) &&
          other.max_percent !== undefined &&
          row.max_percent !== undefined &&
          other.max_percent !== row.max_percent,
      )
      return twin < 0
        ? []
        : [{ path, message: `${row.max_percent} %, row ${twin} says ${rows[twin]?.max_percent} % of the same case` }]
    }),
  )
