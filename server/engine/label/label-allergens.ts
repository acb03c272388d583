import { isAllergenInForce, isDeclared, ROUNDING, thresholdOf } from '#engine/checks/allergen-sums.ts'
import type { AllergenSum } from '#engine/checks/allergen-sums.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { LabelAllergen } from '#engine/model/label.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import { titleCase } from './label-names.ts'

/** Why it is not for this list to judge, or not yet; null where its sum decides. */
function unjudged({ allergen }: AllergenSum, { formula, placedOn, world: { say } }: FormulaContext): string | null {
  if (formula.market !== 'eu')
    return say`no list of fragrance allergens of this market is on record; the sum is shown, nothing is decided`
  if (allergen.banned_by !== undefined) return say`prohibited (${allergen.banned_by}); declaring it cures nothing`
  if (isAllergenInForce(allergen, placedOn)) return null
  const from = allergen.applies_from ?? ''
  return allergen.older_stock_until === undefined
    ? say`due only for goods placed on the market from ${from}`
    : say`due only for goods placed on the market from ${from}, and what was placed before may be sold off until ${allergen.older_stock_until}`
}

const PRODUCT: Record<FormulaContext['formula']['product'], (say: Say) => string> = {
  'leave-on': (say) => say`leave-on`,
  'rinse-off': (say) => say`rinse-off`,
}

/** The sum against its threshold; a sum of natural scents is that of typical lots. */
function judged(sum: AllergenSum, { formula, world: { say } }: FormulaContext, above: number): string {
  const { min_percent, max_percent, typical } = sum
  const bound = say`${above} % (${PRODUCT[formula.product](say)})`
  if (max_percent <= above * ROUNDING) return say`not above ${bound}`
  const range = typical
    ? say`${say.short(min_percent)} to ${say.short(max_percent)} %`
    : say`${say.short(max_percent)} %`
  return min_percent > above
    ? say`${range}, above ${bound}`
    : say`typical lots bring ${range}; the upper end is above ${bound}. The supplier's analysis of the lot may say less`
}

function whyOf(sum: AllergenSum, context: FormulaContext): string {
  const open = unjudged(sum, context)
  if (open !== null) return open
  const { say } = context.world
  const why = judged(sum, context, thresholdOf(sum, context))
  if (sum.analysed.length === 0) return why
  return sum.typical ? say`in part by the supplier's analysis; ${why}` : say`by the supplier's analysis; ${why}`
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
