import { Type } from 'typebox'
import type { Static } from 'typebox'

const closed = { additionalProperties: false }

/** Where a value comes from and how it was seen. */
export const Provenance = Type.Object(
  {
    kind: Type.Union([
      Type.Literal('measured'),
      Type.Literal('law'),
      Type.Literal('assertion'),
      Type.Literal('rule-of-thumb'),
      Type.Literal('derived'),
    ]),
    source: Type.String(),
    locator: Type.String(),
    access: Type.Union([
      Type.Literal('read'),
      Type.Literal('secondary'),
      Type.Literal('memory'),
      Type.Literal('common-practice'),
    ]),
    date: Type.String(),
  },
  closed,
)
export type Provenance = Static<typeof Provenance>

/** One sourced statement about an ingredient. `unit` is that of the property; exactly one form of value is present. */
export const Claim = Type.Object(
  {
    id: Type.String(),
    property: Type.String(),
    value: Type.Optional(Type.Number()),
    min: Type.Optional(Type.Number()),
    max: Type.Optional(Type.Number()),
    is: Type.Optional(Type.String()),
    spectrum: Type.Optional(Type.Record(Type.String(), Type.String())),
    shares: Type.Optional(Type.Record(Type.String(), Type.Number())),
    unit: Type.String(),
    ...Provenance.properties,
    conditions: Type.Optional(Type.String()),
    note: Type.Optional(Type.String()),
    used: Type.Boolean({ description: 'The claim that the checks and the search read' }),
  },
  closed,
)
export type Claim = Static<typeof Claim>

/** Only measured facts and law may stop a formula; everything else warns. */
export const mayStop = (claim: Pick<Provenance, 'kind' | 'access'>): boolean =>
  (claim.kind === 'measured' || claim.kind === 'law') && (claim.access === 'read' || claim.access === 'secondary')
