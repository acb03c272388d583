import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Finding } from './finding.ts'
import { Id } from './formula.ts'
import { oneOf } from './one-of.ts'

const closed = { additionalProperties: false }

/** A share of the formula [%]; both ends are the same where it is known. */
export const ShareRange = Type.Object({ min: Type.Number(), max: Type.Number() }, closed)
export type ShareRange = Static<typeof ShareRange>

/** One place of the ingredient list: what stands there, with which share, and why there. */
export const Position = Type.Object(
  {
    name: Type.String(),
    ingredient: Type.Union([Id, Type.Null()], { description: 'Record behind the name; null: named out of its scents' }),
    percent: ShareRange,
    group: oneOf('ordered', 'free', 'allergen', 'colour'),
    why: Type.String(),
    from: Type.Array(Id, { description: 'Lines of the formula that bring it' }),
  },
  closed,
)
export type Position = Static<typeof Position>

/** A fragrance allergen with the sum behind it. */
export const LabelAllergen = Type.Object(
  {
    name: Type.String(),
    declare: Type.Boolean(),
    percent: ShareRange,
    from: Type.Array(Id),
    analysed: Type.Array(Id, {
      description: "Those of `from` of which the supplier's analysis is used in place of the typical range",
    }),
    above_percent: Type.Number({ description: 'Declared above this share' }),
    why: Type.String(),
  },
  closed,
)
export type LabelAllergen = Static<typeof LabelAllergen>

/** What only the maker or the supplier can tell. */
export const LabelQuestion = Type.Object(
  { text: Type.String(), why: Type.String(), about: Type.Array(Id), sources: Type.Array(Type.String()) },
  closed,
)
export type LabelQuestion = Static<typeof LabelQuestion>

/** A rule by which the list is made, with where it stands. */
export const LabelRule = Type.Object({ text: Type.String(), sources: Type.Array(Type.String()) }, closed)
export type LabelRule = Static<typeof LabelRule>

/** A kind of list that the law has and that is not on record here, with the reason. */
export const NotCovered = Type.Object({ list: Type.String(), why: Type.String() }, closed)
export type NotCovered = Static<typeof NotCovered>

/** What goes on the label, as far as a formula tells. */
export const Label = Type.Object(
  {
    list: Type.Array(Type.String(), { description: 'Names in legal order' }),
    text: Type.String({ description: 'The list ready to copy' }),
    positions: Type.Array(Position),
    allergens: Type.Array(LabelAllergen),
    warnings: Type.Array(Type.String(), { description: 'Words that the law prescribes' }),
    questions: Type.Array(LabelQuestion),
    rules: Type.Array(LabelRule, { description: 'How the list is made' }),
    findings: Type.Array(Finding),
    notCovered: Type.Array(NotCovered, { description: 'Lists of the law of this market that were not judged' }),
  },
  closed,
)
export type Label = Static<typeof Label>
