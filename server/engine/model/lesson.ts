import { Type } from 'typebox'
import type { Static, TProperties } from 'typebox'
import { Id } from './formula.ts'
import { ItemKind } from './learn.ts'
import { LessonLive } from './lesson-live.ts'
import { LessonRecipe, RecipeChange } from './lesson-recipe.ts'
import { oneOf } from './one-of.ts'

const closed = <T extends TProperties>(properties: T) => Type.Object(properties, { additionalProperties: false })
const opt = Type.Optional
const Ph = Type.Number({ minimum: -1, maximum: 15 })
const Name = Type.String({ minLength: 1, maxLength: 100 })

const Plays = closed({ ingredient: Id, role: Name })
const ClaimAgrees = closed({
  ingredient: Id,
  property: Name,
  of: opt(Type.String({ description: 'One fatty acid of a profile, or one group of germs of a spectrum' })),
  min: opt(Type.Number()),
  max: opt(Type.Number()),
  equals: opt(Type.Union([Type.Number(), Type.String()])),
  at_least: opt(Type.Number()),
  at_most: opt(Type.Number()),
})

/** Facts that a look into the records decides; a data lint asks them at every start. */
export const FACT_KINDS = {
  plays: Plays,
  not_plays: Plays,
  in_class: closed({ ingredient: Id, class: Name }),
  claim: ClaimAgrees,
  holds_at: closed({ ingredient: Id, ph: Ph, holds: oneOf('yes', 'no'), window: opt(oneOf('works', 'keeps')) }),
}

/** What only a question to the engine decides: checks, search, calculation. Tests ask it. */
export const ASKED_KINDS = {
  clash: closed({ between: Type.Array(Id, { minItems: 2, maxItems: 2 }) }),
  finding: closed({ recipe: LessonRecipe, change: opt(RecipeChange), brings: Name }),
  no_finding: closed({ recipe: LessonRecipe, change: opt(RecipeChange), rule: Name }),
  swap: closed({
    recipe: LessonRecipe,
    missing: Id,
    offered: opt(Id),
    refused: opt(Id),
    outcome: opt(oneOf('swaps', 'no-safe-swap')),
  }),
  calculates: closed({
    name: Name,
    inputs: Type.Record(Type.String(), Type.Unknown()),
    value: Name,
    equals: Type.Number(),
    tolerance: Type.Number({ minimum: 0 }),
  }),
}

const optional = <T extends TProperties>(all: T): { [K in keyof T]: ReturnType<typeof opt<T[K]>> } =>
  Object.fromEntries(Object.entries(all).map(([key, schema]) => [key, opt(schema)])) as never

/** A sentence of the lesson with what has to be so for it to be true: exactly one kind beside `says`. */
export const Statement = Type.Object(
  { says: Type.String({ minLength: 10, maxLength: 300 }), ...optional(FACT_KINDS), ...optional(ASKED_KINDS) },
  { additionalProperties: false, minProperties: 2, maxProperties: 2 },
)
export type Statement = Static<typeof Statement>

export const LessonPart = closed({
  heading: opt(Type.String({ minLength: 2, maxLength: 80 })),
  text: Type.String({ minLength: 20 }),
})
const Access = oneOf('read', 'secondary', 'memory', 'common-practice')
const Seen = closed({ source: Type.String(), locator: Type.String(), access: Access, date: Type.String() })

export const Practise = closed({
  kinds: opt(Type.Array(ItemKind, { minItems: 1 })),
  roles: opt(Type.Array(Name, { minItems: 1, maxItems: 20 })),
})

/** A file of graph-data/lessons. What it is about says its folder: a role or an idea; its name is the id. */
export const LessonFile = closed({
  id: Id,
  title: Type.String({ minLength: 3, maxLength: 80 }),
  question: Type.String({ minLength: 10, maxLength: 200 }),
  parts: Type.Array(LessonPart, { minItems: 2, maxItems: 5 }),
  seen: Seen,
  cautions: Type.Array(Type.String({ minLength: 10, maxLength: 300 })),
  sources: Type.Array(closed({ source: Type.String(), locator: Type.String(), access: Access })),
  states: Type.Array(Statement, { minItems: 2, maxItems: 12 }),
  live: LessonLive,
  practise: opt(Practise),
  next: opt(Type.Array(Id, { maxItems: 5 })),
})
export type LessonFile = Static<typeof LessonFile>

export const LessonAbout = closed({ kind: oneOf('role', 'idea'), id: Id })
export interface Lesson extends LessonFile {
  about: Static<typeof LessonAbout>
}

/** What a statement comes to: whether it is so, what is on record, and where that is from. */
export interface Judged {
  holds: boolean
  found: string
  sources: string[]
}
