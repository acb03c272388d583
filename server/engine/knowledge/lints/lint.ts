import type { IngredientClass, Problem, PropertySpec, Role, Source } from '#engine/model/records.ts'
import type { InventoryRow, RawData } from '#engine/knowledge/raw.ts'

/** What a lint may look things up in. */
export interface Vocabulary {
  roles: ReadonlyMap<string, Role>
  classes: ReadonlyMap<string, IngredientClass>
  properties: ReadonlyMap<string, PropertySpec>
  sources: ReadonlyMap<string, Source>
  inventory: ReadonlyMap<string, InventoryRow>
}

/** Checks all records and gives every fault, each with file and path. */
export type Lint = (raw: RawData, vocabulary: Vocabulary) => Problem[]
