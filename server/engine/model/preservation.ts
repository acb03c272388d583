import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Finding } from './finding.ts'
import { Id } from './formula.ts'
import { oneOf } from './one-of.ts'

const closed = { additionalProperties: false }

const Span = Type.Object({ min: Type.Number(), max: Type.Number() }, closed)
const SpanOrNull = Type.Union([Span, Type.Null()])

/** What holds a part of an agent back from work, as a share of its total. */
export const Taken = Type.Object(
  {
    by: oneOf('oil', 'micelles', 'dissociation', 'other'),
    share_percent: Type.Number({ description: 'Of the total, for the middle of the constants' }),
    ingredient: Type.Optional(Id),
  },
  closed,
)
export type Taken = Static<typeof Taken>

export const Agent = Type.Object(
  {
    ingredient: Id,
    partOf: Type.Optional(Type.Unsafe<Id>({ ...Id, description: 'Blend of the formula that brings it' })),
    total_percent: Type.Number({ description: 'Of the formula, as supplied' }),
    free_percent: Type.Unsafe<Static<typeof SpanOrNull>>({
      ...SpanOrNull,
      description:
        'Free in the water phase, in per cent of it, counted as the acid where it is one; from 0 where an unknown part is bound; null where nothing can be said',
    }),
    undissociated_percent: Type.Unsafe<Static<typeof SpanOrNull>>({
      ...SpanOrNull,
      description: 'Of that the undissociated acid; null where it does not ionise or the pH is not known',
    }),
    window: oneOf('inside', 'edge', 'outside', 'not-known'),
    takenBy: Type.Array(Taken),
  },
  closed,
)
export type Agent = Static<typeof Agent>

export const Cover = oneOf('covered', 'weak', 'open', 'not-known')
export type Cover = Static<typeof Cover>

export const Hurdle = Type.Object(
  { kind: oneOf('ph', 'water-activity', 'chelator', 'humectant', 'package'), text: Type.String() },
  closed,
)
export type Hurdle = Static<typeof Hurdle>

export const PreservationVerdict = oneOf('plausible', 'weak', 'fails', 'not-known')
export type PreservationVerdict = Static<typeof PreservationVerdict>

/** Is the preservative at work here? Never "preserved": a challenge test decides. */
export const PreservationReport = Type.Object(
  {
    agents: Type.Array(Agent),
    covers: Type.Object({ gramPositive: Cover, gramNegative: Cover, yeast: Cover, mould: Cover }, closed),
    hurdles: Type.Array(Hurdle),
    verdict: PreservationVerdict,
    findings: Type.Array(Finding),
  },
  closed,
)
export type PreservationReport = Static<typeof PreservationReport>
