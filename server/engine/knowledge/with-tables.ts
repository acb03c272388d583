import { ACCESS_ORDER, isSeen } from '#engine/model/access.ts'
import type { Claim, Ingredient } from '#engine/model/records.ts'
import { gradeOf, GRADES } from './source-grade.ts'
import type { Grade, Sources } from './source-grade.ts'
import { BY_WORD } from './table-claims.ts'

/** A value of these tables that holds under a stated condition is for people to read; a record has to choose it. */
const isConditional = ({ id, conditions }: Claim): boolean =>
  /^(windows-|stated-|pka\/)/.test(id) && conditions !== undefined

/** A number, or a word that the vocabulary fixes; free text is for people to read. */
const canDecide = ({ property, min, max, value, shares, spectrum, is }: Claim): boolean =>
  [min, max, value, shares, spectrum].some((part) => part !== undefined) || (BY_WORD.has(property) && is !== undefined)

/** A print without a grade is a paper as a rule: no page of a seller is left ungraded. */
const UNGRADED: Grade = 'B'

/**
 * How well a claim is founded, the best 0: what somebody saw before what is remembered, a standard as another quotes it
 * before a seller's page that was read itself. Profiles come in their own order: a remembered standard of the oil says
 * more than one sample that was read.
 */
function rankOf({ access, shares, source }: Claim, sources: Sources): number {
  if (shares) return 0
  const unseen = isSeen({ access }) ? 0 : 1
  return (
    (unseen * GRADES.length + GRADES.indexOf(gradeOf(source, sources) ?? UNGRADED)) * ACCESS_ORDER.length +
    ACCESS_ORDER.indexOf(access)
  )
}

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
export function withTables(ingredient: Ingredient, claims: readonly Claim[], sources: Sources): Ingredient {
  if (claims.length === 0) return ingredient
  const facts = new Map(ingredient.facts)
  const ranked = claims.map((row) => ({ row, rank: rankOf(row, sources) })).sort((a, b) => a.rank - b.rank)
  for (const { row } of ranked) facts.set(row.property, withRow(facts.get(row.property) ?? [], row))
  return { ...ingredient, facts }
}
