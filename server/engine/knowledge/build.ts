import type { Claim, Ingredient, Problem, Source } from '#engine/model/records.ts'
import { expandAcids } from './acids.ts'
import { oilConstantClaims } from './derived-claims.ts'
import { isObject } from './expand-claims.ts'
import { expandIngredient } from './expand-ingredient.ts'
import { expandLimit } from './expand-limit.ts'
import { expandClashes, expandClasses, expandProperties, expandRoles, expandRule } from './expand-vocabulary.ts'
import { fattyAcidClaims } from './fatty-acid-claims.ts'
import type { DeclaredAllergen, Knowledge } from './knowledge.ts'
import { lintRawRecords } from './lints/index.ts'
import { buildNameIndex } from './name-index.ts'
import type { RawData, RawFile } from './raw.ts'
import { tableClaims } from './table-claims.ts'
import { expandWords } from './word-data.ts'

const ACCESS_ORDER = ['read', 'secondary', 'memory', 'common-practice']

/** A value of the windows tables that holds under a stated condition is for people to read; a record has to choose it. */
const isConditional = ({ id, conditions }: Claim): boolean => id.startsWith('windows-') && conditions !== undefined

/** Adds claims of tables behind those of the record; where the record has none the best seen one is used. */
function withTables(ingredient: Ingredient, claims: readonly Claim[]): Ingredient {
  if (claims.length === 0) return ingredient
  const facts = new Map(ingredient.facts)
  const best = [...claims].sort((a, b) => ACCESS_ORDER.indexOf(a.access) - ACCESS_ORDER.indexOf(b.access))
  for (const claim of best) {
    const own = facts.get(claim.property) ?? []
    const numeric =
      claim.min !== undefined || claim.max !== undefined || claim.value !== undefined || claim.shares !== undefined
    facts.set(claim.property, [
      ...own,
      { ...claim, used: numeric && !isConditional(claim) && !own.some(({ used }) => used) },
    ])
  }
  return { ...ingredient, facts }
}

function withDerived(ingredient: Ingredient): Ingredient {
  const derived = oilConstantClaims(ingredient)
  if (derived.length === 0) return ingredient
  const facts = new Map(ingredient.facts)
  for (const claim of derived) {
    const own = facts.get(claim.property) ?? []
    facts.set(claim.property, [...own, { ...claim, used: !own.some(({ used }) => used) }])
  }
  return { ...ingredient, facts }
}

function sourcesOf(raw: RawData): Map<string, Source> {
  const rows = raw.sources.flatMap((table) => table.rows)
  return new Map(
    rows.map((row) => {
      const id = row['source_id'] ?? ''
      const title = row['title'] ?? row['citation'] ?? id
      const locator = row['locator'] ?? row['address'] ?? ''
      return [id, { id, title, locator, grade: row['grade'] ?? '', note: row['note'] ?? '' }]
    }),
  )
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

const allergenOf = (row: Record<string, unknown>): DeclaredAllergen => ({
  label: String(row['label_name'] ?? ''),
  members: Array.isArray(row['members']) ? row['members'].map(String) : [],
  leave_on_percent: Number(row['leave_on_threshold_percent'] ?? 0.001),
  rinse_off_percent: Number(row['rinse_off_threshold_percent'] ?? 0.01),
  source: String(row['source'] ?? ''),
  locator: String(row['locator'] ?? ''),
})

/** Reads raw files into the engine's knowledge. Faults do not throw: they stand in `problems`, with file and path. */
export function buildKnowledge(raw: RawData): Knowledge {
  const properties = expandProperties(raw.properties)
  const tables = tableClaims(raw.tables)
  const profiles = fattyAcidClaims(raw.tables)
  const ingredients = raw.ingredients
    .filter((file) => isObject(file.data))
    .map((file) => expandIngredient(file.data as Record<string, unknown>, properties))
    .map((ingredient) =>
      withTables(ingredient, [...(tables.get(ingredient.id) ?? []), ...(profiles.get(ingredient.id) ?? [])]),
    )
    .map(withDerived)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
  const inventory = new Map(raw.inventory.map((row) => [row.id, row]))
  const aliases = aliasesOf(ingredients, new Set(inventory.keys()), raw.ingredients)
  const allergenRows = raw.allergens.flatMap((file) => {
    const data = isObject(file.data) ? file.data['allergens'] : file.data
    return Array.isArray(data) ? data.filter(isObject) : []
  })
  const vocabulary = {
    roles: expandRoles(raw.roles),
    classes: expandClasses(raw.classes),
    properties,
    sources: sourcesOf(raw),
  }
  const words = expandWords(raw.names)
  const problems: Problem[] = lintRawRecords(raw, { ...vocabulary, inventory })
  return {
    version: raw.version,
    ...vocabulary,
    ingredients: new Map(ingredients.map((ingredient) => [ingredient.id, ingredient])),
    inventory,
    clashes: expandClashes(raw.clashes),
    limits: raw.limits.map(expandLimit).sort((a, b) => (a.id < b.id ? -1 : 1)),
    rules: new Map(raw.rules.map(expandRule).map((rule) => [rule.id, rule])),
    allergens: allergenRows.map(allergenOf),
    acids: expandAcids(raw.tables),
    aliases,
    names: buildNameIndex(ingredients, inventory.values(), aliases, words.names),
    words,
    tables: plainTables(raw),
    problems,
  }
}
