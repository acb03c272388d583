import { Type } from 'typebox'
import type { Static, TProperties } from 'typebox'
import { Id } from './formula.ts'
import { LessonRecipe, RecipeChange } from './lesson-recipe.ts'

const opt = Type.Optional
const Says = Type.String({ minLength: 10, maxLength: 300 })
const Share = Type.Number({ exclusiveMinimum: 0, maximum: 100 })
const Ph = Type.Number({ minimum: 0, maximum: 14 })
const Name = Type.String({ minLength: 1, maxLength: 100 })

const closed = <T extends TProperties>(properties: T) => Type.Object(properties, { additionalProperties: false })
const live = <K extends string, T extends TProperties>(kind: K, properties: T) =>
  closed({ kind: Type.Literal(kind), says: Says, ...properties })
const Turn = closed({ says: Says, change: RecipeChange })

/** What a lesson lets a learner move or take apart, by kind. `says` tells what to do and what to look at. */
export const LIVE_KINDS = {
  /** `breaks` makes the rule `brings` fire; `mends`, made on top of it, silences the rule again */
  'break-and-mend': live('break-and-mend', { recipe: LessonRecipe, breaks: Turn, brings: Name, mends: Turn }),
  'ph-slider': live('ph-slider', {
    ingredients: Type.Array(Id, { minItems: 1, maxItems: 4 }),
    recipe: opt(LessonRecipe),
    from: Ph,
    to: Ph,
    start: Ph,
  }),
  'level-slider': live('level-slider', {
    recipe: LessonRecipe,
    ingredient: Id,
    from_percent: Share,
    to_percent: Share,
    step_percent: Share,
  }),
  'compare-oils': live('compare-oils', { from: Id, to: Id }),
  spectrum: live('spectrum', { ingredients: Type.Array(Id, { minItems: 1, maxItems: 5 }) }),
  'who-plays': live('who-plays', {
    role: Name,
    ph: opt(Ph),
    hottest_c: opt(Type.Number({ minimum: 0, maximum: 200 })),
  }),
  calculate: live('calculate', {
    name: Name,
    inputs: Type.Record(Type.String(), Type.Unknown()),
    vary: opt(
      closed({
        input: Name,
        says: Type.String({ minLength: 2, maxLength: 60, description: 'Name of the slider, with unit' }),
        from: Type.Number(),
        to: Type.Number(),
        step: Type.Number({ exclusiveMinimum: 0 }),
      }),
    ),
  }),
}
export type LiveKind = keyof typeof LIVE_KINDS

export type LessonLive = { [K in LiveKind]: Static<(typeof LIVE_KINDS)[K]> }[LiveKind]
export const LessonLive = Type.Unsafe<LessonLive>(Type.Union(Object.values(LIVE_KINDS)))
