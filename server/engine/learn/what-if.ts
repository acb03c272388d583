import { checkFormula } from '#engine/checks/report.ts'
import { faultsOf, withAliases } from '#engine/checks/faults.ts'
import { takesUpDifference } from '#engine/dose/rebalance.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import type { RecipeChange } from '#engine/model/lesson-recipe.ts'
import type { WhatIf } from '#engine/model/what-if.ts'
import { chanceOf, hashOf, shuffled } from './chance.ts'
import { changedRecipe } from './lesson-change.ts'
import { newFindings } from './news.ts'
import { NOTHING } from './recipe-items.ts'
import { ruleChoice, silentRules } from './rule-choices.ts'

/** More rules than these at once no learner can foresee; the worst are asked about. */
const MOST_ASKED = 3

const subjectOf = ({ rule, severity, about }: Finding): string => `${rule} ${severity} ${about.join(' ')}`

/** Rules that speak of something they did not speak of before, the worst first; other figures alone are no news. */
function freshRules(before: readonly Finding[], after: readonly Finding[]): string[] {
  const old = new Set(before.map(subjectOf))
  return [...new Set(after.filter((one) => !old.has(subjectOf(one))).map(({ rule }) => rule))]
}

/** Ids that a change is about: their shares are stated, so none of them may take up the rest. */
const named = ({ remove, add, level, replace }: RecipeChange): Set<string> =>
  new Set([remove, add?.ingredient, level?.ingredient, replace?.ingredient].filter((id) => id !== undefined))

/** The same recipe with one line that takes up the difference, where none is said to: water, else the main oil. */
function withFiller(world: World, formula: Formula, change: RecipeChange): Formula {
  if (formula.lines.some(({ fills }) => fills)) return formula
  const filler = takesUpDifference(buildContext(formula, world), named(change))
  const at = formula.lines.findIndex(({ ingredient }) => ingredient === filler)
  const lines = formula.lines.map((line, place): Line => {
    if (place !== at) return line
    const { share_percent: _share, ...rest } = line
    return { ...rest, fills: true }
  })
  return { ...formula, lines }
}

/** @throws RangeError with the first fault of the changed recipe */
function sound(world: World, formula: Formula): Formula {
  const [fault] = faultsOf(formula, world)
  if (fault) throw new RangeError(`change: ${fault.message}`)
  return withAliases(formula, world)
}

/**
 * What a change does to a recipe: what the check says anew and what it no longer says, and rules to choose from before
 * that is told. Wrong choices are rules that stay silent after the change and are not on the matter of one that speaks.
 *
 * @throws RangeError when the change is about something that the recipe does not hold, or leaves no recipe
 */
export function whatIfOf(world: World, formula: Formula, change: RecipeChange): WhatIf {
  const after = sound(world, changedRecipe(withFiller(world, formula, change), change))
  const [was, is] = [formula, after].map((one) => checkFormula(world, one).findings) as [Finding[], Finding[]]
  const chance = chanceOf(hashOf(JSON.stringify([formula, change])))
  const fresh = freshRules(was, is)
  const asked = fresh.slice(0, MOST_ASKED).flatMap((id) => world.knowledge.rules.get(id) ?? [])
  const silent = silentRules(world, after, is, chance) ?? []
  return {
    after,
    choices: [...shuffled([...asked, ...silent].map(ruleChoice), chance), NOTHING],
    right: asked.length > 0 ? asked.map(({ id }) => id) : [NOTHING.id],
    news: newFindings(was, is),
    gone: newFindings(is, was),
  }
}
