import type { Claim, Ingredient } from '#engine/model/records.ts'

/** File of a record. */
export const fileOf = ({ id }: { id: string }): string => `ingredients/${id}.yaml`

const TABLE_ROW = /^([a-z-]+)\/(\d+)$/
const HEAD_LINES = 2 // the head of a table is line 1

/** Where a claim is written: place in the record, or line of a table. */
export function placeOf(ingredient: Ingredient, { id, property }: Claim): string {
  if (id.startsWith(`${ingredient.id}#`))
    return `${fileOf(ingredient)}/facts/${property}${id.slice(id.lastIndexOf('/'))}`
  const row = TABLE_ROW.exec(id)
  return row ? `tables/${row[1]}.tsv:${Number(row[2]) + HEAD_LINES}` : `tables, row ${id}`
}
