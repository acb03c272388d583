import { ACCESS_ORDER } from '#engine/model/access.ts'
import type { Claim, Ingredient } from '#engine/model/records.ts'
import { BY_WORD } from './table-claims.ts'

/** A value of these tables that holds under a stated condition is for people to read; a record has to choose it. */
const isConditional = ({ id, conditions }: Claim): boolean =>
  /^(windows-|stated-|pka\/)/.test(id) && conditions !== undefined

/** A number, or a word that the vocabulary fixes; free text is for people to read. */
const canDecide = ({ property, min, max, value, shares, spectrum, is }: Claim): boolean =>
  [min, max, value, shares, spectrum].some((part) => part !== undefined) || (BY_WORD.has(property) && is !== undefined)

/** Profiles come in their own order: a remembered standard of the oil says more than one sample that was read. */
const rankOf = ({ access, shares }: Claim): number => (shares ? 0 : ACCESS_ORDER.indexOf(access))

/** One figure, whether written as a value or as a range of no width. */
const valueOf = ({ min, max, value, shares, spectrum, is }: Claim): string =>
  JSON.stringify([value ?? min, value ?? max, shares, spectrum, is])

/** The record's claim that states what a row of a table states: it chose that row, and the two are one claim. */
const choiceOf = (list: readonly Claim[], row: Claim): Claim | undefined =>
  list.find((own) => own.id.includes('#') && own.source === row.source && valueOf(own) === valueOf(row))

/** The record's claim with the circumstances that the row tells. */
const withCircumstances = (own: Claim, { conditions }: Claim): Claim =>
  own.conditions === undefined && conditions !== undefined ? { ...own, conditions } : own

/** The list with one more claim behind the others; the first that can decide is used. */
function withRow(list: readonly Claim[], row: Claim): Claim[] {
  const choice = choiceOf(list, row)
  if (choice) return list.map((own) => (own === choice ? withCircumstances(own, row) : own))
  const used = canDecide(row) && !isConditional(row) && !list.some((other) => other.used)
  return [...list, row.used === used ? row : { ...row, used }]
}

/**
 * Adds claims of tables behind those of the record; where the record has none the best seen one is used. A row that the
 * record itself states, from the same source, stands once.
 */
export function withTables(ingredient: Ingredient, claims: readonly Claim[]): Ingredient {
  if (claims.length === 0) return ingredient
  const facts = new Map(ingredient.facts)
  const best = [...claims].sort((a, b) => rankOf(a) - rankOf(b))
  for (const row of best) facts.set(row.property, withRow(facts.get(row.property) ?? [], row))
  return { ...ingredient, facts }
}
