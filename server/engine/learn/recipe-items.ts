import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula, Product } from '#engine/model/formula.ts'
import type { Static } from 'typebox'
import type { ItemRecipe, PracticeFormula } from '#engine/model/learn.ts'
import { drawChange } from './change.ts'
import type { Change } from './change.ts'
import { drawOne } from './chance.ts'
import type { Chance } from './chance.ts'
import { namesIn } from './draft.ts'
import type { Draft, Maker } from './draft.ts'
import { findingsFor, newFindings, tellingFinding } from './news.ts'
import { ruleChoice, silentRules } from './rule-choices.ts'

/** Choice that no rule has anything new to say. */
export const NOTHING = { id: 'nothing-new', text: 'Nothing new: no rule has anything to add' }

interface Case {
  world: World
  practice: PracticeFormula
  change: Change
  before: readonly Finding[]
  after: readonly Finding[]
}

function drawCase(world: World, chance: Chance): Case | null {
  const practice = drawOne(world.knowledge.practice, chance)
  const change = practice && drawChange(world, practice.formula, chance)
  if (!practice || !change) return null
  return {
    world,
    practice,
    change,
    before: findingsFor(world, practice.formula),
    after: findingsFor(world, change.formula),
  }
}

/** Nobody should read a recipe with lye or strong acid in it without being told. */
const cautionsOf = (world: World, formula: Formula): string[] => [
  ...new Set(
    findingsFor(world, formula)
      .filter(({ rule }) => rule === 'handle-with-care')
      .map(becauseOf),
  ),
]

export const recipeOf = (world: World, title: string, formula: Formula): ItemRecipe => ({
  title,
  formula,
  names: namesIn(world, formula),
  cautions: cautionsOf(world, formula),
})

const PRODUCT: Record<Static<typeof Product>, string> = { 'leave-on': 'stays on', 'rinse-off': 'is rinsed off' }

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`)

export const becauseOf = ({ message, remedy }: Finding): string =>
  [message, ...(remedy === undefined ? [] : [remedy])].map(sentence).join(' ')

/** Key and wrong choices of a change that makes a rule fire. */
function aboutRule({ world, change, before, after }: Case, chance: Chance) {
  const finding = tellingFinding(before, after, chance)
  const rule = finding && world.knowledge.rules.get(finding.rule)
  const silent = silentRules(world, change.formula, after, chance)
  if (!finding || !rule || !silent) return null
  return {
    rule,
    silent,
    answer: {
      key: rule.id,
      because: becauseOf(finding),
      sources: finding.sources,
      about: { rule: rule.id, ingredients: [...new Set([...finding.about, ...change.ingredients])] },
      after: change.formula,
    },
  }
}

/** A recipe that held together was changed in one way: which rule objects now? */
export const findFault: Maker = (world, chance) => {
  const drawn = drawCase(world, chance)
  const about = drawn && aboutRule(drawn, chance)
  if (!drawn || !about) return null
  const { practice, change } = drawn
  return {
    difficulty: change.ingredients.length > 1 ? 3 : 2,
    question: `One thing in this recipe was changed, and now it has a fault. It ${PRODUCT[change.formula.product]}; market: ${change.formula.market.toUpperCase()}. What is wrong?`,
    recipe: recipeOf(world, practice.title, change.formula),
    choices: [about.rule, ...about.silent].map(ruleChoice),
    ...about.answer,
    because: `The change: ${change.text}. ${about.answer.because}`,
  }
}

/** Of changes that nothing objects to only some are asked about: most are dull. */
const ASK_ABOUT_NOTHING = 0.25

function nothingNew({ world, practice, change, before, after }: Case, chance: Chance): Draft | null {
  const silent = silentRules(world, change.formula, after, chance)
  if (newFindings(before, after).length > 0 || !silent || chance() > ASK_ABOUT_NOTHING) return null
  return {
    difficulty: 3,
    question: `What happens if ${change.text}?`,
    recipe: recipeOf(world, practice.title, practice.formula),
    choices: [NOTHING, ...silent.map(ruleChoice)],
    key: NOTHING.id,
    because: `Checked again as a whole, no rule says anything that it did not say before. That is what the rules can see; it is no test.`,
    sources: ['practice'],
    about: { ingredients: change.ingredients },
    after: change.formula,
  }
}

/** One thing is changed: which finding appears, if any? */
export const whatIf: Maker = (world, chance) => {
  const drawn = drawCase(world, chance)
  if (!drawn) return null
  const about = aboutRule(drawn, chance)
  if (!about) return nothingNew(drawn, chance)
  return {
    difficulty: drawn.change.ingredients.length === 0 ? 1 : 2,
    question: `What happens if ${drawn.change.text}?`,
    recipe: recipeOf(world, drawn.practice.title, drawn.practice.formula),
    choices: [NOTHING, ...[about.rule, ...about.silent].map(ruleChoice)],
    ...about.answer,
  }
}
