import { contentsOf } from '#engine/checks/law-content.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { DeclaredAllergen } from '#engine/knowledge/expand-allergen.ts'
import type { LabelAllergen } from '#engine/model/label.ts'
import { roundTo, short } from '#engine/units/round.ts'
import { titleCase } from './label-names.ts'

/** A declared allergen with the sum of all that brings it. */
export interface AllergenSum {
  allergen: DeclaredAllergen
  min_percent: number
  max_percent: number
  /** lines that bring it, by id */
  from: string[]
  /** brought by natural scents, so that the sum is typical and not known */
  typical: boolean
  /** lines of which the supplier's figures are used, by id */
  analysed: string[]
}

/** Lines in which a substance is, itself or as a part of a blend. */
const linesWith = ({ lines }: FormulaContext, id: string): string[] =>
  lines
    .filter(({ subject }) => subject.id === id || subject.parts.some((part) => part.subject.id === id))
    .map(({ subject }) => subject.id)

/**
 * Sum of one allergen over the formula [%].
 *
 *   sum = pure members + what the supplier found in natural scents, else the typical range of what they hold
 *
 * A natural complex is the sum of its own members; what it brings of single substances counts with those.
 */
function sumOf(allergen: DeclaredAllergen, context: FormulaContext): AllergenSum {
  const contents = contentsOf(context)
  const own = context.substances.filter(({ subject }) => allergen.members.includes(subject.id))
  const sure_percent = own.reduce((sum, { pure_percent }) => sum + pure_percent, 0)
  const brought = allergen.naturalComplex ? [] : allergen.members.flatMap((member) => contents.get(member)?.from ?? [])
  const from = [
    ...own.flatMap(({ subject }) => linesWith(context, subject.id)),
    ...brought.flatMap(({ subject }) => linesWith(context, subject.id)),
  ]
  return {
    allergen,
    min_percent: brought.reduce((sum, one) => sum + one.min_percent, sure_percent),
    max_percent: brought.reduce((sum, one) => sum + one.max_percent, sure_percent),
    from: [...new Set(from)].sort(),
    typical: brought.some(({ analysed }) => !analysed),
    analysed: [
      ...new Set(brought.filter(({ analysed }) => analysed).flatMap(({ subject }) => linesWith(context, subject.id))),
    ].sort(),
  }
}

const inForce = ({ applies_from, date }: DeclaredAllergen, placedOn: string | undefined): boolean =>
  applies_from === undefined || (placedOn ?? date) >= applies_from

/** The share above which it has to be declared in this product [%]. */
export const thresholdOf = ({ allergen }: AllergenSum, { formula }: FormulaContext): number =>
  formula.product === 'leave-on' ? allergen.leave_on_percent : allergen.rinse_off_percent

const ROUNDING = 1.0000001 // sums of decimal shares miss by the last bits

/** Judged on the upper end: what a lot may bring is declared. */
export function isDeclared(sum: AllergenSum, context: FormulaContext): boolean {
  const { allergen } = sum
  if (context.formula.market !== 'eu' || allergen.banned_by !== undefined) return false
  return inForce(allergen, context.placedOn) && sum.max_percent > thresholdOf(sum, context) * ROUNDING
}

function whyOf(sum: AllergenSum, context: FormulaContext): string {
  const { allergen, min_percent, max_percent, typical, analysed } = sum
  const above = thresholdOf(sum, context)
  const bound = `${above} % (${context.formula.product})`
  if (context.formula.market !== 'eu')
    return 'no list of fragrance allergens of this market is on record; the sum is shown, nothing is decided'
  if (allergen.banned_by !== undefined) return `prohibited (${allergen.banned_by}); declaring it cures nothing`
  const until =
    allergen.older_stock_until === undefined
      ? ''
      : `, and what was placed before may be sold off until ${allergen.older_stock_until}`
  if (!inForce(allergen, context.placedOn))
    return `due only for goods placed on the market from ${allergen.applies_from ?? ''}${until}`
  const found = analysed.length === 0 ? '' : `${typical ? 'in part ' : ''}by the supplier's analysis; `
  if (max_percent <= above * ROUNDING) return `${found}not above ${bound}`
  const range = typical ? `${short(min_percent)} to ${short(max_percent)} %` : `${short(max_percent)} %`
  if (min_percent > above) return `${found}${range}, above ${bound}`
  return `${found}typical lots bring ${range}; the upper end is above ${bound}. The supplier's analysis of the lot may say less`
}

const DECIMALS = 7

/** Sums of all allergens that something in the formula brings, by name. */
export const allergenSums = (context: FormulaContext): AllergenSum[] =>
  context.world.knowledge.allergens
    .map((allergen) => sumOf(allergen, context))
    .filter(({ max_percent }) => max_percent > 0)
    .sort((a, b) => (a.allergen.label < b.allergen.label ? -1 : 1))

/** A sum as the label reports it. */
export const allergenOnLabel = (sum: AllergenSum, context: FormulaContext): LabelAllergen => ({
  name: titleCase(sum.allergen.label),
  declare: isDeclared(sum, context),
  percent: { min: roundTo(sum.min_percent, DECIMALS), max: roundTo(sum.max_percent, DECIMALS) },
  from: sum.from,
  analysed: sum.analysed,
  above_percent: thresholdOf(sum, context),
  why: whyOf(sum, context),
})
