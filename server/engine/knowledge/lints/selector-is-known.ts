import { namesIn } from '#engine/knowledge/selector.ts'
import type { Problem, When } from '#engine/model/records.ts'
import type { Lint, Vocabulary } from './lint.ts'
import { fileOf } from './places.ts'

interface Pointing {
  with?: unknown
  for?: unknown
  any_of?: unknown
  between?: unknown
  when?: When
  unless?: When
}

/** Lists of a record that point at others, and their names in its file. */
const LISTS = [
  ['roles', 'roles'],
  ['clashes', 'clashes'],
  ['needs', 'needs'],
  ['boostedBy', 'boosted_by'],
  ['inactivatedBy', 'inactivated_by'],
  ['standsFor', 'stands_in_for'],
  ['notFor', 'does_not_stand_in_for'],
] as const

function addTexts(value: unknown, into: string[]): void {
  if (typeof value === 'string') into.push(value)
  else if (Array.isArray(value)) for (const item of value) if (typeof item === 'string') into.push(item)
}

function addCircumstances(when: When | undefined, into: string[]): void {
  if (!when) return
  addTexts(when.with, into)
  addTexts(when.without, into)
}

/** Selectors of a statement and of the circumstances in which it holds. */
function selectorsOf(one: Pointing): string[] {
  const into: string[] = []
  addTexts(one.with, into)
  addTexts(one.for, into)
  addTexts(one.any_of, into)
  addTexts(one.between, into)
  addCircumstances(one.when, into)
  addCircumstances(one.unless, into)
  return into
}

type Unknown = (selector: string) => readonly string[]

/** Names in a selector that do not exist; the same few selectors stand in many records, so each is looked up once. */
function lookUp({ roles, classes, ingredients, inventory }: Vocabulary): Unknown {
  const memo = new Map<string, readonly string[]>()
  return (selector) => {
    const known = memo.get(selector)
    if (known) return known
    const named = namesIn(selector)
    const missing = [
      ...named.classes.filter((name) => !classes.has(name)),
      ...named.roles.filter((name) => !roles.has(name)),
      ...named.ids.filter((name) => !ingredients.has(name) && !inventory.has(name)),
    ]
    memo.set(selector, missing)
    return missing
  }
}

function problemsOf(statements: readonly Pointing[], path: string, unknown: Unknown): Problem[] {
  const problems: Problem[] = []
  for (const [at, one] of statements.entries()) {
    for (const selector of selectorsOf(one)) {
      for (const name of unknown(selector))
        problems.push({ path: `${path}/${at}`, message: `${name} in "${selector}" is not known` })
    }
  }
  return problems
}

/** Guards against relations that point at nothing: a misspelt id would silently never match. */
export const selectorIsKnown: Lint = (raw, vocabulary) => {
  const unknown = lookUp(vocabulary)
  const problems = problemsOf(vocabulary.clashes, `${raw.clashes.path}/clashes`, unknown)
  for (const ingredient of vocabulary.ingredients.values()) {
    for (const [list, written] of LISTS) {
      if (ingredient[list].length > 0)
        problems.push(...problemsOf(ingredient[list], `${fileOf(ingredient)}/${written}`, unknown))
    }
  }
  return problems
}
