import { isAllergenInForce, isDeclared, ROUNDING, thresholdOf } from '#engine/checks/allergen-sums.ts'
import type { AllergenSum } from '#engine/checks/allergen-sums.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { LabelAllergen } from '#engine/model/label.ts'
import { roundTo, short } from '#engine/units/round.ts'
import { titleCase } from './label-names.ts'

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
  if (!isAllergenInForce(allergen, context.placedOn))
    return `due only for goods placed on the market from ${allergen.applies_from ?? ''}${until}`
  const found = analysed.length === 0 ? '' : `${typical ? 'in part ' : ''}by the supplier's analysis; `
  if (max_percent <= above * ROUNDING) return `${found}not above ${bound}`
  const range = typical ? `${short(min_percent)} to ${short(max_percent)} %` : `${short(max_percent)} %`
  if (min_percent > above) return `${found}${range}, above ${bound}`
  return `${found}typical lots bring ${range}; the upper end is above ${bound}. The supplier's analysis of the lot may say less`
}

const DECIMALS = 7

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
