import { buildContext } from '#engine/formula/build-context.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { drawOne, shuffled } from './chance.ts'
import type { Chance } from './chance.ts'
import { WRONG_CHOICES } from './draft.ts'
import type { Maker } from './draft.ts'
import { findingsFor } from './news.ts'
import { becauseOf, recipeOf } from './recipe-items.ts'
import { isOfSameMatter, ruleChoice } from './rule-choices.ts'

/** A worked case of a rule with what the check says of it. */
interface Case {
  formula: Formula
  finding: Finding
  firing: ReadonlySet<string>
}

/** A case in which the rule speaks; the form stated so that it can be read off the recipe. */
function drawCase(world: World, rule: string, cases: readonly unknown[], chance: Chance): Case | null {
  const formula = drawOne(cases as readonly Formula[], chance)
  if (!formula || formula.lines.length < LEAST_LINES) return null
  const findings = findingsFor(world, formula)
  const finding = findings.find((one) => one.rule === rule)
  return finding ? { formula, finding, firing: new Set(findings.map((one) => one.rule)) } : null
}

/** With fewer lines there is nothing to look through. */
const LEAST_LINES = 2

/** Other rules that stay silent here, none on the matter of the one that is asked about. */
function silentHere(world: World, rule: string, firing: ReadonlySet<string>, chance: Chance) {
  const silent = [...world.knowledge.rules.values()].filter(({ id }) => !firing.has(id) && !isOfSameMatter(rule, id))
  return shuffled(silent, chance).slice(0, WRONG_CHOICES)
}

const formIn = (world: World, formula: Formula): string => buildContext(formula, world).form.replaceAll('-', ' ')

/** What does the check say of this recipe? The recipes are those by which the rules themselves are tested. */
export const ruleSpeaks: Maker = (world, chance) => {
  const rule = drawOne([...world.knowledge.rules.values()], chance)
  const drawn = rule && drawCase(world, rule.id, rule.fires, chance)
  const silent = drawn ? silentHere(world, rule.id, drawn.firing, chance) : []
  if (!rule || !drawn || silent.length < WRONG_CHOICES) return null
  const { formula, finding } = drawn
  return {
    difficulty: finding.severity === 'stop' ? 1 : finding.severity === 'warn' ? 2 : 3,
    question: `Which of these does the check say of this recipe? Read as ${formIn(world, formula)}, ${formula.product}, market ${formula.market.toUpperCase()}.`,
    recipe: recipeOf(world, 'A recipe to judge', formula),
    choices: [rule, ...silent].map(ruleChoice),
    key: rule.id,
    because: becauseOf(finding),
    sources: finding.sources.length > 0 ? finding.sources : ['practice'],
    about: { rule: rule.id, ingredients: finding.about },
  }
}
