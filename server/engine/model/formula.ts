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

/** How a product leaves its package; the law bars some ingredients from what can be breathed in. */
export const Dispensing = oneOf('aerosol', 'pump-spray', 'other')
export type Dispensing = Static<typeof Dispensing>

/** Uses that entries of the law tell apart and that no recipe shows. */
export const USES = [
  ...(['make-up', 'eye-shadow', 'eyeliner', 'mascara', 'concealer', 'face-powder', 'make-up-remover'] as const),
  ...(['sun-protection', 'suntan', 'self-tanning', 'soap', 'shower', 'bath', 'wipe', 'nappy'] as const),
  ...(['fine-fragrance', 'eau-de-toilette', 'fragrance-cream', 'beads-or-glitter', 'acne', 'salon-peel'] as const),
  ...(['foot-care', 'callus-softener', 'astringent', 'depilatory', 'anti-dandruff', 'eyelash-waving'] as const),
  ...(['hair-waving', 'hair-straightening', 'oxidative-dye', 'non-oxidative-dye'] as const),
  ...(['cuticle-softener', 'nail-hardener', 'artificial-nails', 'nail-cleaner'] as const),
] as const
export const Use = oneOf(...USES)
export type Use = Static<typeof Use>

const Substance = Type.Object(
  {
    substance: Id,
    percent: Type.Number({ minimum: 0, maximum: 100, description: 'Per cent of the raw material; 0: not found' }),
  },
  closed,
)

/** What a supplier's paper says a raw material holds; used in place of the typical range. */
export const Analysis = Type.Object(
  {
    ingredient: Id,
    holds: Type.Array(Substance, { maxItems: 100 }),
    complete: Type.Optional(
      Type.Boolean({
        description:
          'The paper speaks of every substance of the law: what it does not name is not in. Left out: not known',
      }),
    ),
  },
  closed,
)
export type Analysis = Static<typeof Analysis>

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
    dispensing: Type.Optional({
      ...Dispensing,
      description: 'How it leaves its package. Left out: not known, and asked where the law bars sprays',
    }),
    professional: Type.Optional(
      Type.Boolean({ description: 'For professional use only; false: for the public. Left out: not known, and asked' }),
    ),
    uses: Type.Optional(
      Type.Array(Use, {
        maxItems: 40,
        uniqueItems: true,
        description:
          'All uses that it is meant for, of those that the law tells apart; an empty list says none of them. Left out: not known, and asked',
      }),
    ),
    analyses: Type.Optional(
      Type.Array(Analysis, {
        maxItems: 100,
        description:
          'What the supplier found in a raw material, in place of the typical range. For an ingredient that is no line it is not used',
      }),
    ),
  },
  closed,
)
export type Formula = Static<typeof Formula>
