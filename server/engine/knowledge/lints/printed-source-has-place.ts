import type { Provenance } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { UNPRINTED } from './source-is-listed.ts'
import { faultsOfOrigin } from './statements.ts'

const withoutPlace = ({ source, locator }: Pick<Provenance, 'source' | 'locator'>): string | undefined =>
  UNPRINTED.has(source) || locator ? undefined : `${source} is named without a place in it`

/** Guards against "somewhere in that book": a printed source comes with the page, table or address. */
export const printedSourceHasPlace: Lint = (_raw, { ingredients, limits }) => [
  ...[...ingredients.values()].flatMap((ingredient) => faultsOfOrigin(ingredient, withoutPlace)),
  ...limits.flatMap(({ id, rows }) =>
    rows.flatMap((row, at) => {
      const message = withoutPlace(row)
      return message === undefined ? [] : [{ path: `limits/${id}.yaml/rows/${at}`, message }]
    }),
  ),
]
