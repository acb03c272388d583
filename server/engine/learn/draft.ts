import type { World } from '#engine/graph/world.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { AskedItem, Item, ItemAnswer, ItemRef } from '#engine/model/learn.ts'
import { numberOf } from '#engine/graph/subject.ts'
import { readableName } from '#engine/units/readable-name.ts'
import { longHashOf, shuffled } from './chance.ts'
import type { Chance } from './chance.ts'

/** An item before its choices are mixed and it is given an id. */
export type Draft = Omit<AskedItem, 'id' | 'ref' | 'kind'> & ItemAnswer

/** Makes a draft of what chance draws; null when the draw leads to no sound question. */
export type Maker = (world: World, chance: Chance, role: string | undefined) => Draft | null

export const WRONG_CHOICES = 3

/** Learners meet what a small maker can buy. */
const COMMON = 3
/** A blend of more parts is a list to read, not a name to know. */
const MOST_PARTS = 2

export const isCommon = (subject: Subject): boolean =>
  subject.madeOf.length <= MOST_PARTS && (numberOf(subject, 'usual') ?? 0) >= COMMON

export const nameOf = ({ inci }: Subject): string => readableName(inci)

export const choiceOf = (subject: Subject) => ({ id: subject.id, text: nameOf(subject) })

/** Names of the lines, for people. */
export const namesIn = (world: World, { lines }: Formula): Record<string, string> =>
  Object.fromEntries(
    lines.map(({ ingredient }) => [ingredient, readableName(world.find(ingredient)?.inci ?? ingredient)]),
  )

/** How a statement was seen, in words. */
export const SEEN = {
  read: 'read in the source',
  secondary: 'read as cited elsewhere',
  memory: 'from memory, not looked up',
  'common-practice': 'common practice, not measured',
} as const

/** Facts, not their order: the same question asked twice has one id. */
function idOf(kind: string, { question, recipe, choices, key }: Draft): string {
  const facts = [kind, question, recipe?.formula ?? null, choices.map(({ id }) => id).sort(), key]
  return longHashOf(JSON.stringify(facts))
}

/** The draft with its choices in drawn order. */
export const finish = (draft: Draft, ref: ItemRef, chance: Chance): Item => ({
  ...draft,
  id: idOf(ref.kind, draft),
  ref,
  kind: ref.kind,
  choices: shuffled(draft.choices, chance),
})
