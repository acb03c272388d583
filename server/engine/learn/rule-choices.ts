import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Rule } from '#engine/model/records.ts'
import { shuffled } from './chance.ts'
import type { Chance } from './chance.ts'
import { WRONG_CHOICES } from './draft.ts'

/**
 * Rules on one matter. Where one of them fires, a plain reader could defend another of the same row, so they are
 * never offered as wrong choices together.
 */
const SAME_MATTER: readonly (readonly string[])[] = [
  [
    ...['ph-keeps', 'ph-works', 'preservative-window', 'preservative-at-window-end', 'no-common-ph', 'law-ph'],
    ...['ester-hydrolysis', 'paraben-hydrolysis', 'soap-in-acid', 'gum-in-acid', 'drawn-into-oil', 'ph-unknown'],
    ...['alkaline-surfactant', 'base-without-partner'],
  ],
  [
    ...['charge-clash', 'binding-clash', 'reaction-clash', 'ion-clash', 'electrolyte-load', 'inactivated'],
    ...['preservative-ion-and-cationic', 'mixture-may-separate', 'salt-response', 'gums-set-together'],
    ...['alcohol-tolerance', 'drawn-into-oil'],
  ],
  [
    ...['limit-by-law', 'limit-coming', 'limit-by-content', 'law-condition', 'law-ph', 'law-not-covered'],
    ...['level-high', 'irritant-here', 'small-children', 'phototoxic', 'handle-with-care', 'allergen-source'],
    ...['limit-by-opinion', 'colour-not-listed', 'colour-list-unknown'],
  ],
  [
    ...['water-without-preservative', 'spectrum-open', 'unproven-preservative', 'preservative-window'],
    ...['preservative-at-window-end', 'brings-germs', 'inactivated', 'level-low'],
  ],
  [
    ...['oil-without-emulsifier', 'emulsifier-too-little', 'emulsifier-of-wrong-kind', 'hlb-off-balance'],
    ...['scent-without-solubiliser', 'oils-do-not-mix', 'water-in-anhydrous', 'need-missing', 'level-low'],
  ],
  [
    ...['need-missing', 'base-without-partner', 'conditioner-without-body', 'lye-balance', 'gum-not-wetted'],
    ...['level-low', 'rancid-soon'],
  ],
  ['heat-too-hot', 'heat-too-low', 'heat-unknown'],
]

/** Could a plain reader take the one for the other? */
export const isOfSameMatter = (a: string, b: string): boolean =>
  SAME_MATTER.some((rules) => rules.includes(a) && rules.includes(b))

const idsIn = (worked: unknown): string[] => {
  const lines = (worked as Partial<Formula>).lines ?? []
  return lines.map(({ ingredient }) => ingredient)
}

/** How many lines a rule's worked cases share with the recipe: such a rule sounds plausible here. */
const nearness = ({ fires }: Rule, here: ReadonlySet<string>): number =>
  Math.max(0, ...fires.map((worked) => idsIn(worked).filter((id) => here.has(id)).length))

const IN_QUESTION: readonly string[] = ['stop', 'warn']
const MOST_DRAWN = 9

/** Rules that sound plausible and do not fire; none is on the matter of one that does. Too few: null. */
export function silentRules(
  world: World,
  formula: Formula,
  findings: readonly Finding[],
  chance: Chance,
): Rule[] | null {
  const firing = [...new Set(findings.map(({ rule }) => rule))]
  const aloud = findings.filter(({ severity }) => severity !== 'note').map(({ rule }) => rule)
  const here = new Set(formula.lines.map(({ ingredient }) => ingredient))
  const silent = [...world.knowledge.rules.values()].filter(
    ({ id, severity }) =>
      IN_QUESTION.includes(severity) && !firing.includes(id) && !aloud.some((one) => isOfSameMatter(one, id)),
  )
  const drawn = shuffled(silent, chance)
    .sort((a, b) => nearness(b, here) - nearness(a, here))
    .slice(0, MOST_DRAWN)
  return drawn.length < WRONG_CHOICES ? null : shuffled(drawn, chance).slice(0, WRONG_CHOICES)
}

export const ruleChoice = ({ id, title }: Pick<Rule, 'id' | 'title'>) => ({ id, text: title })
