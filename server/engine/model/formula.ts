import { Type } from 'typebox'
import type { Static } from 'typebox'
import { oneOf } from './one-of.ts'

const closed = { additionalProperties: false }

/** INCI name in lower case, every run of other characters than a-z and 0-9 one hyphen. */
export const Id = Type.String({ minLength: 1, maxLength: 1000, pattern: '^[a-z0-9]+(-[a-z0-9]+)*$' })
export type Id = string

export const Market = oneOf('eu', 'us')
export const Product = oneOf('leave-on', 'rinse-off')
export const Area = oneOf('face', 'eye', 'lip', 'hair', 'hand', 'body', 'deodorant', 'intimate', 'nail', 'under-3')
export type Area = Static<typeof Area>
export const Form = oneOf('oil-in-water', 'water-in-oil', 'anhydrous', 'gel', 'wash', 'bar', 'powder', 'solution')
export type Form = Static<typeof Form>
export const Phase = oneOf('water', 'oil', 'cool-down')
export type Phase = Static<typeof Phase>

/** One line of a recipe; share in per cent by mass as supplied. */
export const Line = Type.Object(
  {
    ingredient: Id,
    share_percent: Type.Optional(Type.Number({ exclusiveMinimum: 0, maximum: 100 })),
    phase: Type.Optional(Phase),
    fills: Type.Optional(Type.Literal(true)),
    strength_percent: Type.Optional(Type.Number({ exclusiveMinimum: 0, maximum: 100 })),
  },
  closed,
)
export type Line = Static<typeof Line>

export const Formula = Type.Object(
  {
    market: Market,
    product: Product,
    areas: Type.Optional(Type.Array(Area, { maxItems: 10, uniqueItems: true })),
    form: Type.Optional(Form),
    ph: Type.Union([Type.Number({ minimum: -1, maximum: 15 }), Type.Null()]),
    hottest_c: Type.Union([Type.Number({ minimum: -20, maximum: 250 }), Type.Null()]),
    lines: Type.Array(Line, { minItems: 1, maxItems: 100 }),
  },
  closed,
)
export type Formula = Static<typeof Formula>
