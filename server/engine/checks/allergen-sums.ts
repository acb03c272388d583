import type { FormulaContext } from '#engine/formula/context.ts'
import type { DeclaredAllergen } from '#engine/knowledge/expand-allergen.ts'
import { contentsOf } from './law-content.ts'

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

export const isAllergenInForce = ({ applies_from, date }: DeclaredAllergen, placedOn: string | undefined): boolean =>
  applies_from === undefined || (placedOn ?? date) >= applies_from

/** The share above which it has to be declared in this product [%]. */
export const thresholdOf = ({ allergen }: AllergenSum, { formula }: FormulaContext): number =>
  formula.product === 'leave-on' ? allergen.leave_on_percent : allergen.rinse_off_percent

export const ROUNDING = 1.0000001 // sums of decimal shares miss by the last bits

/** Judged on the upper end: what a lot may bring is declared. */
export function isDeclared(sum: AllergenSum, context: FormulaContext): boolean {
  const { allergen } = sum
  if (context.formula.market !== 'eu' || allergen.banned_by !== undefined) return false
  return isAllergenInForce(allergen, context.placedOn) && sum.max_percent > thresholdOf(sum, context) * ROUNDING
}

function addUp(context: FormulaContext): AllergenSum[] {
  const here = new Set([...context.substances.map(({ subject }) => subject.id), ...contentsOf(context).keys()])
  return context.world.knowledge.allergens
    .filter(({ members }) => members.some((id) => here.has(id)))
    .map((allergen) => sumOf(allergen, context))
    .filter(({ max_percent }) => max_percent > 0)
    .sort((a, b) => (a.allergen.label < b.allergen.label ? -1 : 1))
}

/** Each stand-in is compared with the same formula before. */
const memo = new WeakMap<FormulaContext, readonly AllergenSum[]>()

/** Sums of all allergens that something in the formula brings, by name. */
export function allergenSums(context: FormulaContext): readonly AllergenSum[] {
  const known = memo.get(context) ?? addUp(context)
  memo.set(context, known)
  return known
}

/** Names that the law asks for on the label of this formula, in order. */
export const declaredNames = (context: FormulaContext): string[] =>
  allergenSums(context)
    .filter((sum) => isDeclared(sum, context))
    .map(({ allergen }) => allergen.label)
