import { allergenSums } from '#engine/checks/allergen-sums.ts'
import type { AllergenSum } from '#engine/checks/allergen-sums.ts'
import { runRule } from '#engine/checks/run.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Label } from '#engine/model/label.ts'
import type { Say } from '#engine/words/say.ts'
import { allergenOnLabel } from './label-allergens.ts'
import { blendName, titleCase } from './label-names.ts'
import { positionsOf } from './label-order.ts'
import { isOpenBlend, partsOf } from './label-parts.ts'
import { labelQuestions, listsNotCovered, openScents, rulesOfList } from './label-questions.ts'
import { warningsOf } from './label-warnings.ts'

/** Rules of law that bear on a label. */
const LAW_RULES = [
  ...['limit-by-law', 'limit-by-opinion', 'limit-coming', 'limit-by-content', 'law-ph', 'law-condition'],
  ...['law-not-covered', 'colour-list-unknown', 'colour-not-listed'],
]

const GRAVITY = { stop: 0, warn: 1, unknown: 2, note: 3 } as const

/** What makes the label incomplete: scents and blends that nobody can look into. */
function gaps(context: FormulaContext): Finding[] {
  const { say } = context.world
  const scents = openScents(context).map(({ id, inci }) => ({
    rule: 'label-incomplete',
    severity: 'unknown' as const,
    about: [id],
    message: say`${titleCase(inci)}: which allergens it holds is not known; any of those of the law may have to be declared`,
    remedy: say`Ask the supplier for the allergen list of the lot`,
    because: [{ fact: say`composition not on record` }],
    sources: [],
  }))
  const blends = context.lines
    .filter(({ subject }) => isOpenBlend(subject))
    .map(({ subject }) => ({
      rule: 'label-incomplete',
      severity: 'unknown' as const,
      about: [subject.id],
      message: say`${blendName(subject.inci)}: the shares of its parts are not known, so their places in the list are not`,
      remedy: say`Ask the supplier for the shares`,
      because: [{ fact: say`blend not on record` }],
      sources: [],
    }))
  return [...scents, ...blends]
}

/** An allergen that is banned is no matter of declaring. */
const banned = (sums: readonly AllergenSum[], say: Say): Finding[] =>
  sums
    .filter(({ allergen, typical }) => allergen.banned_by !== undefined && !typical)
    .map(({ allergen, from }) => ({
      rule: 'label-incomplete',
      severity: 'note' as const,
      about: from,
      message: say`${titleCase(allergen.label)} is prohibited (${allergen.banned_by ?? ''}); declaring it on the label cures nothing`,
      because: [{ fact: allergen.locator }],
      sources: [allergen.source],
    }))

/** A list of fragrance allergens is on record for the EU alone. */
const allergensNotCovered = ({ formula, world: { say } }: FormulaContext, sums: readonly AllergenSum[]): Finding[] =>
  formula.market === 'eu' || sums.length === 0
    ? []
    : [
        {
          rule: 'label-incomplete',
          severity: 'unknown',
          about: [],
          message: say`Fragrance allergens: no list of this market is on record; the sums are shown, nothing is decided`,
          remedy: say`Look up whether the market asks for them`,
          because: [{ fact: say`list not covered` }],
          sources: [],
        },
      ]

const byGravity = (a: Finding, b: Finding): number => {
  const [keyA, keyB] = [a, b].map(({ rule, about }) => `${rule} ${about.join(' ')}`)
  return GRAVITY[a.severity] - GRAVITY[b.severity] || ((keyA ?? '') < (keyB ?? '') ? -1 : 1)
}

/**
 * What goes on the label as far as the formula tells: the list of ingredients in legal order, fragrance allergens with
 * their sums, prescribed words, open questions, findings of law. No statement that a label is in order.
 *
 * @param placedOn day on which the goods reach the market, YYYY-MM-DD; without it the day of the tables counts
 */
export function buildLabel(world: World, formula: Formula, placedOn?: string): Label {
  const context = buildContext(formula, world, placedOn)
  const sums = allergenSums(context)
  const positions = positionsOf(partsOf(context), sums, context)
  const list = positions.map(({ name }) => name)
  const law = LAW_RULES.flatMap((rule) => runRule(rule, context))
  return {
    list,
    // The word before the list is the same in every language of the EU.
    text: `Ingredients: ${list.join(', ')}`,
    positions,
    allergens: sums.map((sum) => allergenOnLabel(sum, context)),
    warnings: warningsOf(context),
    questions: labelQuestions(context),
    rules: rulesOfList(context),
    findings: [...law, ...gaps(context), ...banned(sums, world.say), ...allergensNotCovered(context, sums)].sort(
      byGravity,
    ),
    notCovered: listsNotCovered(context),
  }
}
