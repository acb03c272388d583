import { Type } from 'typebox'
import type { Static } from 'typebox'
import { oneOf } from './one-of.ts'
import { Finding } from './finding.ts'
import { Formula, Id, Phase } from './formula.ts'

const closed = { additionalProperties: false }

/** What the person wants of a stand-in, beside that it works. */
export const Wishes = Type.Object(
  {
    only: Type.Optional(Type.Array(Id, { maxItems: 2000 })),
    without: Type.Optional(Type.Array(Id, { maxItems: 200 })),
    hottest_c: Type.Optional(Type.Number({ minimum: -20, maximum: 250 })),
    keepPh: Type.Optional(Type.Boolean()),
    alsoInventory: Type.Optional(
      Type.Boolean({
        description: 'Also propose names of which only functions and name are known; they rank last and are marked so',
      }),
    ),
    weights: Type.Optional(
      Type.Record(Type.String({ maxLength: 60 }), Type.Number({ minimum: 0, maximum: 10 }), {
        description:
          'Factor on the weight of a criterion, by its name; 1 is as recorded. `usual` moves how much it counts that an ingredient is easy to get',
      }),
    ),
  },
  closed,
)
export type Wishes = Static<typeof Wishes>

export const SwapLine = Type.Object(
  { ingredient: Id, share_percent: Type.Number(), phase: Type.Optional(Phase) },
  closed,
)
export type SwapLine = Static<typeof SwapLine>

export const Change = Type.Object(
  {
    kind: oneOf('dose', 'ph', 'heat', 'order', 'add', 'remove', 'feel', 'label'),
    text: Type.String(),
    ingredient: Type.Optional(Id),
    from: Type.Optional(Type.Number()),
    to: Type.Optional(Type.Number()),
    unit: Type.Optional(Type.String()),
  },
  closed,
)
export type Change = Static<typeof Change>

export const Step = Type.Object(
  { from: Type.String(), relation: Type.String(), to: Type.String(), claim: Type.Optional(Type.String()) },
  closed,
)
export type Step = Static<typeof Step>

export const Evidence = oneOf('measured', 'published', 'practice', 'memory')
export type Evidence = Static<typeof Evidence>

/** One line of the comparison: how near a stand-in comes in what, and how much that counts. */
export const CriterionRow = Type.Object(
  {
    criterion: Type.String(),
    label: Type.String(),
    weight: Type.Number({ description: 'Share of the comparison, 0 to 1' }),
    why: Type.String(),
    nearness: Type.Union([Type.Number(), Type.Null()], { description: 'Null: not known of the stand-in' }),
    missing: Type.String(),
    standIn: Type.String(),
  },
  closed,
)
export type CriterionRow = Static<typeof CriterionRow>

/** What would cover a job that a stand-in leaves open; tried in the new formula and found to hold. */
export const Companion = Type.Object(
  { ingredient: Id, share_percent: Type.Number(), role: Type.String(), text: Type.String(), formula: Formula },
  closed,
)
export type Companion = Static<typeof Companion>

export const Swap = Type.Object(
  {
    grade: oneOf('good', 'workable'),
    replaces: Type.Array(Id),
    role: Type.String({ description: 'The role in this formula for which the stand-in was sought' }),
    lines: Type.Array(SwapLine),
    why: Type.String(),
    changes: Type.Array(Change),
    formula: Type.Optional(Formula),
    findings: Type.Array(Finding),
    toCheck: Type.Optional(Type.Array(Type.String())),
    path: Type.Array(Step),
    scores: Type.Record(Type.String(), Type.Number()),
    criteria: Type.Array(CriterionRow),
    open: Type.Array(Type.String(), { description: 'Roles that the missing one plays here and the stand-in does not' }),
    companions: Type.Array(Companion),
    unknown: Type.Array(Type.String(), { description: 'Properties that are not known and lowered the rank' }),
    evidence: Evidence,
    sources: Type.Array(Type.String()),
  },
  closed,
)
export type Swap = Static<typeof Swap>

/** A smallest change with which a refused stand-in would hold; each was tried. */
export const WouldWork = Type.Object(
  {
    kind: oneOf('ph', 'dose', 'heat', 'remove'),
    text: Type.String(),
    min: Type.Optional(Type.Number()),
    max: Type.Optional(Type.Number()),
    unit: Type.Optional(Type.String()),
    ingredient: Type.Optional(Id),
    formula: Formula,
  },
  closed,
)
export type WouldWork = Static<typeof WouldWork>

export const Refusal = Type.Object(
  {
    lines: Type.Array(SwapLine),
    conflict: Type.Array(Finding),
    message: Type.String(),
    wouldWork: Type.Optional(Type.Array(WouldWork)),
  },
  closed,
)
export type Refusal = Static<typeof Refusal>

export const LeaveOut = Type.Object({ verdict: oneOf('fine', 'workable', 'no'), why: Type.String() }, closed)
export type LeaveOut = Static<typeof LeaveOut>

/** An answer about one ingredient that a person named: how it does as a stand-in, or why it does not. */
export const AboutOne = Type.Object(
  {
    ingredient: Id,
    place: Type.Union([Type.Integer({ minimum: 1 }), Type.Null()], {
      description: 'Place among the proposals; null: not among them',
    }),
    text: Type.String(),
    swap: Type.Optional(Swap),
    refusal: Type.Optional(Refusal),
  },
  closed,
)
export type AboutOne = Static<typeof AboutOne>

export const SwapsReply = Type.Object(
  {
    outcome: oneOf('swaps', 'no-safe-swap', 'not-known'),
    why: Type.String(),
    roles: Type.Array(Type.Object({ ingredient: Id, role: Type.String(), essential: Type.Boolean() }, closed)),
    swaps: Type.Array(Swap),
    refused: Type.Array(Refusal),
    leaveOut: LeaveOut,
    about: Type.Optional(Type.Array(AboutOne)),
    giveUp: Type.Optional(
      Type.Array(
        Type.Object({ wishes: Type.Array(Type.String()), text: Type.String(), allows: Type.Array(Id) }, closed),
        { description: 'Smallest sets of wishes to give up when no stand-in fulfils all, and what each would allow' },
      ),
    ),
    graphVersion: Type.String(),
  },
  closed,
)
export type SwapsReply = Static<typeof SwapsReply>
