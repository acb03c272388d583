import { Type } from 'typebox'
import type { Static } from 'typebox'

const closed = { additionalProperties: false }

export const Severity = Type.Union([
  Type.Literal('stop'),
  Type.Literal('warn'),
  Type.Literal('note'),
  Type.Literal('unknown'),
])
export type Severity = Static<typeof Severity>

/** A reason: a claim that can be opened, or what the recipe or usual practice says. */
export const Because = Type.Object(
  {
    fact: Type.String(),
    claim: Type.Optional(Type.String()),
    from: Type.Optional(Type.Union([Type.Literal('recipe'), Type.Literal('practice')])),
  },
  closed,
)

/** What a rule has to say about a formula. `about` is empty when it concerns the formula as a whole. */
export const Finding = Type.Object(
  {
    rule: Type.String(),
    severity: Severity,
    about: Type.Array(Type.String()),
    message: Type.String(),
    remedy: Type.Optional(Type.String()),
    because: Type.Array(Because),
    sources: Type.Array(Type.String()),
  },
  closed,
)
export type Finding = Static<typeof Finding>

export const Verdict = Type.Union([
  Type.Literal('clear'),
  Type.Literal('attention'),
  Type.Literal('stop'),
  Type.Literal('not-known'),
])
export type Verdict = Static<typeof Verdict>
