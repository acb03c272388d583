import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Formula, Id } from './formula.ts'
import { oneOf } from './one-of.ts'

const closed = { additionalProperties: false }

export const ITEM_KINDS = [
  'plays-role',
  'holds-at-ph',
  'active-matter',
  'find-fault',
  'rule-speaks',
  'what-if',
  'swap-here',
  'order-work',
] as const

/** What is asked: who plays a role, who holds at a pH, a dose, a fault, what the check says, what a change brings, whether a swap holds, the order of work. */
export const ItemKind = oneOf(...ITEM_KINDS)
export type ItemKind = Static<typeof ItemKind>

export const LARGEST_SEED = 4_294_967_295

/** Names an item: the same graph makes the same item of it. */
export const ItemRef = Type.Object(
  {
    kind: ItemKind,
    seed: Type.Integer({ minimum: 0, maximum: LARGEST_SEED }),
    role: Type.Optional(Type.String({ minLength: 1, maxLength: 100, description: 'Asks about this role or below it' })),
  },
  closed,
)
export type ItemRef = Static<typeof ItemRef>

export const ItemChoice = Type.Object({ id: Type.String(), text: Type.String() }, closed)
export type ItemChoice = Static<typeof ItemChoice>

/** The recipe that an item is about, with the names of its lines. */
export const ItemRecipe = Type.Object(
  {
    title: Type.String(),
    formula: Formula,
    names: Type.Record(Type.String(), Type.String()),
    cautions: Type.Array(Type.String(), { description: 'What of it is dangerous to handle' }),
  },
  closed,
)
export type ItemRecipe = Static<typeof ItemRecipe>

/** A practice item as the learner sees it: without its key. */
export const AskedItem = Type.Object(
  {
    id: Type.String({ description: 'Made of kind and facts: the same question has the same id' }),
    ref: ItemRef,
    kind: ItemKind,
    difficulty: Type.Integer({ minimum: 1, maximum: 3 }),
    question: Type.String(),
    recipe: Type.Optional(ItemRecipe),
    choices: Type.Array(ItemChoice),
  },
  closed,
)
export type AskedItem = Static<typeof AskedItem>

/** Why the key is the key, and where that can be looked up. */
export const ItemAnswer = Type.Object(
  {
    key: Type.String({ description: 'Id of the right choice' }),
    because: Type.String(),
    sources: Type.Array(Type.String()),
    about: Type.Object(
      { role: Type.Optional(Type.String()), rule: Type.Optional(Type.String()), ingredients: Type.Array(Id) },
      closed,
    ),
    after: Type.Optional(Formula),
  },
  closed,
)
export type ItemAnswer = Static<typeof ItemAnswer>

export type Item = AskedItem & ItemAnswer

/** A small recipe that holds together, to practise on. One line of it fills up to 100 %. */
export interface PracticeFormula {
  id: string
  title: string
  formula: Formula
}
