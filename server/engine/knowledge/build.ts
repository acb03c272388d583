import type { Claim, Ingredient, Problem, Source } from '#engine/model/records.ts'
import { catalogueOf } from '#engine/words/catalogue.ts'
import { acidClaims } from './acid-claims.ts'
import { expandAcids } from './acids.ts'
import { chargeOfParts } from './blend-charge.ts'
import { blendClaims } from './blend-claims.ts'
import { expandClassFacts } from './class-facts.ts'
import { oilConstantClaims } from './derived-claims.ts'
import { expandAllergens } from './expand-allergen.ts'
import { isObject } from './expand-claims.ts'
import { expandCompositions } from './expand-composition.ts'
import { expandIngredient } from './expand-ingredient.ts'
import { expandLimit } from './expand-limit.ts'
import { expandTerms } from './expand-terms.ts'
import { expandLessons } from './expand-lessons.ts'
import { expandPractice } from './expand-practice.ts'
import { expandClashes, expandClasses, expandProperties, expandRoles, expandRule } from './expand-vocabulary.ts'
import { fattyAcidClaims } from './fatty-acid-claims.ts'
import type { Knowledge } from './knowledge.ts'
import { lintRawRecords } from './lints/index.ts'
import type { Vocabulary } from './lints/lint.ts'
import { buildNameIndex } from './name-index.ts'
import type { NameIndex } from './name-index.ts'
import type { RawData, RawFile } from './raw.ts'
import { tableClaims } from './table-claims.ts'
import { tierOf } from './tier.ts'
import { withTables } from './with-tables.ts'
import { withDerived, workOut } from './work-out.ts'
import type { Grounds } from './work-out.ts'
import { expandWords } from './word-data.ts'
import type { WordData } from './word-data.ts'

function sourcesOf(raw: RawData): Map<string, Source> {
  const rows = raw.sources.flatMap((table) => table.rows)
  return new Map(
    rows.map((row) => {
      const id = row['source_id'] ?? ''
      const title = row['title'] ?? row['citation'] ?? id
      const locator = row['locator'] ?? row['address'] ?? ''
      return [id, { id, title, locator, grade: row['grade'] ?? '', note: row['note'] ?? '', date: row['date'] ?? '' }]
    }),
  )
}

/** Records, blends with what follows from their parts, all with what follows from other things, and their tier. */
function withBlends(ingredients: readonly Ingredient[], grounds: Grounds): Map<string, Ingredient> {
  const { roles } = grounds
  const byId = new Map(ingredients.map((ingredient) => [ingredient.id, ingredient]))
  const withParts = (one: Ingredient): Ingredient => {
    if (one.madeOf.length === 0) return one
    const classes = new Set([...one.classes, ...chargeOfParts(one, byId)])
    return withDerived({ ...one, classes }, blendClaims(one, byId, roles))
  }
  const withTier = (one: Ingredient): Ingredient => ({ ...one, tier: tierOf(one, roles) })
  return new Map(ingredients.map((ingredient) => [ingredient.id, withTier(workOut(withParts(ingredient), grounds))]))
}

/** Tables that state no claim about one ingredient, by their name. */
const plainTables = (raw: RawData): Knowledge['tables'] =>
  new Map(
    raw.tables
      .filter(({ rows }) => rows[0] !== undefined && !('inci' in rows[0]))
      .map(({ path, rows }) => [path.replace(/^.*\//, '').replace(/\.tsv$/, ''), rows]),
  )

/** Names that stand twice in the inventory: the record's own former or US names are aliases. */
function aliasesOf(ingredients: readonly Ingredient[], inventoryIds: ReadonlySet<string>, files: readonly RawFile[]) {
  const aliases = new Map<string, string>()
  const known = new Set(ingredients.map((ingredient) => ingredient.id))
  for (const file of files) {
    if (!isObject(file.data) || !Array.isArray(file.data['same_as'])) continue
    for (const other of file.data['same_as'].map(String)) {
      if (inventoryIds.has(other) && !known.has(other)) aliases.set(other, String(file.data['id']))
    }
  }
  return aliases
}

/** Catalogues are read when somebody asks for their language. */
const languagesOf = ({ languages }: RawData): (() => Knowledge['languages']) =>
  later(() => new Map([['de', catalogueOf((languages?.['de'] ?? []).map(({ data }) => data))]]))

/** Makes a thing when it is first asked for and keeps it; what it was made of is let go then. */
function later<T>(make: () => T): () => T {
  let state: { make: () => T } | { value: T } = { make }
  return () => {
    if ('make' in state) state = { value: state.make() }
    return state.value
  }
}

/** Faults are looked for when asked about: a question to the graph needs neither them nor the raw files. */
const faultsOf = (raw: RawData, known: Vocabulary): (() => readonly Problem[]) =>
  later(() => lintRawRecords(raw, known))

/** Names are put in order when the first is looked up: the graph is asked by ids. */
const namesOf = (known: Vocabulary, words: WordData): (() => NameIndex) =>
  later(() => buildNameIndex(known.ingredients.values(), known.inventory.values(), known.aliases, words.names))

/** Reads raw files into the engine's knowledge. Faults do not throw: they stand in `problems`, with file and path. */
export function buildKnowledge(raw: RawData): Knowledge {
  const properties = expandProperties(raw.properties)
  const tables = tableClaims(raw.tables, properties)
  const profiles = fattyAcidClaims(raw.tables)
  const acids = expandAcids(raw.tables)
  const constants = acidClaims(acids)
  const sources = sourcesOf(raw)
  const claimsFor = (id: string): Claim[] => [tables, profiles, constants].flatMap((claims) => claims.get(id) ?? [])
  const ingredients = raw.ingredients
    .filter((file) => isObject(file.data))
    .map((file) => expandIngredient(file.data as Record<string, unknown>, properties))
    .map((ingredient) => withTables(ingredient, claimsFor(ingredient.id), sources))
    .map((ingredient) => withDerived(ingredient, oilConstantClaims(ingredient)))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
  const inventory = new Map(raw.inventory.map((row) => [row.id, row]))
  const aliases = aliasesOf(ingredients, new Set(inventory.keys()), raw.ingredients)
  const vocabulary = {
    roles: expandRoles(raw.roles),
    classes: expandClasses(raw.classes),
    properties,
    sources,
  }
  const words = expandWords(raw.names)
  const classFacts = expandClassFacts(raw, properties)
  const known = {
    ...vocabulary,
    ingredients: withBlends(ingredients, { classFacts, roles: vocabulary.roles, acids }),
    classFacts,
    inventory,
    clashes: expandClashes(raw.clashes),
    limits: raw.limits.map(expandLimit).sort((a, b) => (a.id < b.id ? -1 : 1)),
    rules: new Map(raw.rules.map(expandRule).map((rule) => [rule.id, rule])),
    allergens: expandAllergens(raw.allergens),
    compositions: expandCompositions(raw.allergens),
    acids,
    aliases,
    tables: plainTables(raw),
    practice: expandPractice(raw.practice ?? []),
    lessons: expandLessons(raw.lessons ?? []),
    terms: expandTerms(raw.terms),
  }
  const faults = faultsOf(raw, known)
  const names = namesOf(known, words)
  const languages = languagesOf(raw)
  return {
    version: raw.version,
    ...known,
    words,
    get names() {
      return names()
    },
    get languages() {
      return languages()
    },
    get problems() {
      return faults()
    },
  }
}
