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
    unknown: Type.Array(Type.String(), { description: 'Properties that are not known and lowered the rank' }),
    evidence: Evidence,
    sources: Type.Array(Type.String()),
  },
  closed,
)
export type Swap = Static<typeof Swap>

export const Refusal = Type.Object(
  { lines: Type.Array(SwapLine), conflict: Type.Array(Finding), message: Type.String() },
  closed,
)
export type Refusal = Static<typeof Refusal>

export const LeaveOut = Type.Object({ verdict: oneOf('fine', 'workable', 'no'), why: Type.String() }, closed)
export type LeaveOut = Static<typeof LeaveOut>

export const SwapsReply = Type.Object(
  {
    outcome: oneOf('swaps', 'no-safe-swap', 'not-known'),
    why: Type.String(),
    roles: Type.Array(Type.Object({ ingredient: Id, role: Type.String(), essential: Type.Boolean() }, closed)),
    swaps: Type.Array(Swap),
    refused: Type.Array(Refusal),
    leaveOut: LeaveOut,
    graphVersion: Type.String(),
  },
  closed,
)
export type SwapsReply = Static<typeof SwapsReply>
