import type {
  ClassClash,
  Ingredient,
  IngredientClass,
  Limit,
  Problem,
  PropertySpec,
  Role,
  Rule,
  Source,
} from '#engine/model/records.ts'
import type { Lesson } from '#engine/model/lesson.ts'
import type { PracticeFormula } from '#engine/model/learn.ts'
import type { Catalogue } from '#engine/words/catalogue.ts'
import type { Language } from '#engine/words/say.ts'
import type { AcidTable } from './acids.ts'
import type { ClassFacts } from './class-facts.ts'
import type { DeclaredAllergen } from './expand-allergen.ts'
import type { Composition } from './expand-composition.ts'
import type { Terms } from './expand-terms.ts'
import type { NameIndex } from './name-index.ts'
import type { InventoryRow } from './raw.ts'
import type { WordData } from './word-data.ts'

/** Everything the engine knows, read-only. */
export interface Knowledge {
  /** hash of the data */
  version: string
  ingredients: ReadonlyMap<string, Ingredient>
  inventory: ReadonlyMap<string, InventoryRow>
  roles: ReadonlyMap<string, Role>
  classes: ReadonlyMap<string, IngredientClass>
  properties: ReadonlyMap<string, PropertySpec>
  /** what classes and roles state about all their members */
  classFacts: ClassFacts
  clashes: readonly ClassClash[]
  limits: readonly Limit[]
  rules: ReadonlyMap<string, Rule>
  sources: ReadonlyMap<string, Source>
  allergens: readonly DeclaredAllergen[]
  /** what natural scents typically hold of substances that the law names */
  compositions: ReadonlyMap<string, Composition>
  /** acids, bases and their salts with constants */
  acids: AcidTable
  /** terms under which the data are given out */
  terms: Terms
  /** former or second id of a substance → id of its record */
  aliases: ReadonlyMap<string, string>
  names: NameIndex
  words: WordData
  /** tables that are no claims about one ingredient (group numbers, coefficients), rows by name of the table */
  tables: ReadonlyMap<string, readonly Readonly<Record<string, string>>[]>
  /** recipes that hold together, to make practice items of */
  practice: readonly PracticeFormula[]
  /** lessons by id */
  lessons: ReadonlyMap<string, Lesson>
  /** sentences of the engine and of the data in other languages than English */
  languages: ReadonlyMap<Language, Catalogue>
  problems: readonly Problem[]
}
