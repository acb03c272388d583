import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Provenance } from '#engine/model/claim.ts'
import { DescribedClaim, Evidence } from '#engine/model/evidence.ts'
import { Id } from '#engine/model/formula.ts'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'
import { decimalText, PAGE } from './query.ts'

export const Tier = oneOf('full', 'short', 'inventory')

export const ShortRecord = closed({
  id: Type.String(),
  inci: Type.String(),
  tier: Tier,
  names: Type.Array(Type.String(), { description: 'Common names, the most usual first' }),
  roles: Type.Array(Type.String()),
  classes: Type.Array(Type.String()),
})
export type ShortRecord = Static<typeof ShortRecord>

export const IngredientsQuery = closed({
  text: Type.Optional(Type.String({ maxLength: 200 })),
  role: Type.Optional(
    Type.String({ maxLength: 400, description: 'A role, or several parted by commas: one of them or a narrower one' }),
  ),
  class: Type.Optional(Type.String({ maxLength: 100 })),
  tier: Type.Optional(Tier),
  ph: decimalText('Keeps at this pH and, where it works in a window only, works there'),
  heat_c: decimalText('Bears this heat'),
  cold: Type.Optional(Type.Literal('true', { description: 'Can be worked in without heat, at 40 C at most' })),
  solubility: Type.Optional(
    Type.String({ maxLength: 40, description: 'water, oil, both, silicone or insoluble; both fits water and oil' }),
  ),
  charge: Type.Optional(Type.String({ maxLength: 40, description: 'A class of the group charge, such as anionic' })),
  beside: Type.Optional(
    Type.String({ maxLength: 4000, description: 'Ids parted by commas, at most 20: clashes with none of them' }),
  ),
  unknown: Type.Optional(
    Type.Literal('include', { description: 'Takes in what would fit but for a value that is not known' }),
  ),
  ...PAGE,
})
export const IngredientsReply = closed({
  ingredients: Type.Array(ShortRecord),
  next: Type.Union([Type.String(), Type.Null()]),
  total: Type.Number(),
  notKnown: Type.Optional(
    Type.Number({ description: 'How many more may fit: a value that was asked for is not known of them' }),
  ),
  graphVersion: Type.String(),
})

const Level = closed({
  min: Type.Optional(Type.Number()),
  max: Type.Optional(Type.Number()),
  typical: Type.Optional(Type.Number()),
})

/** A statement on the way to or from another node of the graph. */
export const Neighbour = closed({
  relation: Type.String(),
  direction: oneOf('out', 'in'),
  node: Type.String(),
  label: Type.String(),
  says: Type.Optional(Type.String()),
  severity: Type.Optional(Type.String()),
  level_percent: Type.Optional(Level),
  ...Type.Partial(Provenance).properties,
})

export const IngredientReply = closed({
  id: Type.String(),
  inci: Type.String(),
  tier: Tier,
  cas: Type.Array(Type.String()),
  names: Type.Record(Type.String(), Type.Array(Type.String())),
  roles: Type.Array(
    closed({
      role: Type.String(),
      label: Type.String(),
      level_percent: Type.Optional(Level),
      when: Type.Optional(Type.String({ description: 'In which circumstances, in words' })),
      ...Provenance.properties,
      evidence: Evidence,
    }),
  ),
  classes: Type.Array(closed({ id: Type.String(), label: Type.String(), group: Type.String(), says: Type.String() })),
  madeOf: Type.Array(closed({ ingredient: Type.String(), inci: Type.String(), share_percent: Type.Number() })),
  windows: closed({
    ph_stability: Type.Optional(Level),
    ph_effective: Type.Optional(Level),
    heat_max_c: Type.Optional(Type.Number()),
  }),
  claims: Type.Array(DescribedClaim),
  contested: Type.Array(Type.String(), { description: 'Properties on which the claims disagree' }),
  decisions: Type.Array(
    closed({
      property: Type.String(),
      claim: Type.Union([Type.String(), Type.Null()], {
        description: 'The claim that is used; null where none decides',
      }),
      why: Type.String(),
    }),
    { description: 'For every contested property which claim the program goes by, and why; all claims stay' },
  ),
  neighbours: Type.Array(Neighbour),
  limits: Type.Array(
    closed({ id: Type.String(), market: oneOf('eu', 'us'), title: Type.String(), text: Type.Array(Type.String()) }),
  ),
  cautions: Type.Array(Type.String()),
  sources: Type.Array(closed({ id: Type.String(), title: Type.String(), locator: Type.String() })),
  graphVersion: Type.String(),
})
export type IngredientReply = Static<typeof IngredientReply>

export const ingredientsRoute = {
  method: 'GET',
  url: '/api/ingredients',
  schema: { querystring: IngredientsQuery, response: { 200: IngredientsReply, '4xx': ErrorReply } },
} as const

export const ingredientRoute = {
  method: 'GET',
  url: '/api/ingredients/:id',
  schema: { params: closed({ id: Id }), response: { 200: IngredientReply, '4xx': ErrorReply } },
} as const
