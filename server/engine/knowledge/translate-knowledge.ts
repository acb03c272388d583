import type { Ingredient, Role, Rule } from '#engine/model/records.ts'
import type { Catalogue } from '#engine/words/catalogue.ts'
import type { Knowledge } from './knowledge.ts'

type Words = (english: string) => string

interface Saying {
  says: string
}

const says =
  (words: Words) =>
  <T extends Saying>(one: T): T => ({ ...one, says: words(one.says) })

const why =
  (words: Words) =>
  <T extends { why: string }>(one: T): T => ({ ...one, why: words(one.why) })

function roleIn(role: Role, words: Words): Role {
  const { swap } = role
  return {
    ...says(words)(role),
    label: words(role.label),
    ...(role.work !== undefined && { work: words(role.work) }),
    swap: {
      ...swap,
      must: swap.must.map(why(words)),
      criteria: swap.criteria.map(why(words)),
      ...(swap.irreplaceable !== undefined && { irreplaceable: words(swap.irreplaceable) }),
    },
  }
}

const ingredientIn = (one: Ingredient, words: Words): Ingredient => ({
  ...one,
  clashes: one.clashes.map(says(words)),
  needs: one.needs.map(says(words)),
  boostedBy: one.boostedBy.map(says(words)),
  inactivatedBy: one.inactivatedBy.map(says(words)),
  standsFor: one.standsFor.map(says(words)),
  notFor: one.notFor.map(says(words)),
  cautions: one.cautions.map(words),
  cautionsAt: Object.fromEntries(Object.entries(one.cautionsAt).map(([step, texts]) => [step, texts.map(words)])),
})

const ruleIn = (rule: Rule, words: Words): Rule => ({ ...why(words)(rule), title: words(rule.title) })

const each = <K, T>(map: ReadonlyMap<K, T>, change: (one: T) => T): Map<K, T> =>
  new Map([...map].map(([key, one]) => [key, change(one)]))

/**
 * The same knowledge with what it says in another language: roles, rules, clashes, cautions. Names, sources and the
 * wording of legal entries stay as they are.
 */
export function translateKnowledge(knowledge: Knowledge, catalogue: Catalogue): Knowledge {
  const words: Words = (english) => catalogue.get(english) ?? english
  const translated = {
    roles: each(knowledge.roles, (role) => roleIn(role, words)),
    classes: each(knowledge.classes, says(words)),
    properties: each(knowledge.properties, says(words)),
    rules: each(knowledge.rules, (rule) => ruleIn(rule, words)),
    clashes: knowledge.clashes.map(says(words)),
    ingredients: each(knowledge.ingredients, (one) => ingredientIn(one, words)),
  }
  // Names and faults are worked out when asked for: they are handed on as they are, unasked.
  const rest = Object.getOwnPropertyDescriptors(knowledge)
  return Object.defineProperties({}, { ...rest, ...Object.getOwnPropertyDescriptors(translated) }) as Knowledge
}
