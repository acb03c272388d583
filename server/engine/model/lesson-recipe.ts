import { Type } from 'typebox'
import type { Static, TProperties } from 'typebox'
import { Formula, Id, Line } from './formula.ts'

const closed = <T extends TProperties>(properties: T) => Type.Object(properties, { additionalProperties: false })
const opt = Type.Optional
const Share = Type.Number({ exclusiveMinimum: 0, maximum: 100 })

/** Id of a practice recipe, or a recipe written out. */
export const LessonRecipe = Type.Union([Type.String({ minLength: 1, maxLength: 100 }), Formula])
export type LessonRecipe = Static<typeof LessonRecipe>

/** One thing or several of a recipe made different; shares in per cent by mass. */
export const RecipeChange = Type.Object(
  {
    ph: opt(Type.Number({ minimum: -1, maximum: 15 })),
    hottest_c: opt(Type.Number({ minimum: -20, maximum: 250 })),
    remove: opt(Id),
    add: opt(Line),
    level: opt(closed({ ingredient: Id, share_percent: Share })),
    replace: opt(closed({ ingredient: Id, by: Id, share_percent: opt(Share) })),
  },
  { additionalProperties: false, minProperties: 1 },
)
export type RecipeChange = Static<typeof RecipeChange>
