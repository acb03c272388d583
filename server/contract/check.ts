import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Finding, Verdict } from '#engine/model/finding.ts'
import { Form, Formula } from '#engine/model/formula.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

const Window = closed({
  min: Type.Optional(Type.Number()),
  max: Type.Optional(Type.Number()),
  claim: Type.Optional(Type.String()),
})

export const CheckBody = closed({
  formula: Formula,
  placedOn: Type.Optional(
    Type.String({ pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'Day on which the goods reach the market' }),
  ),
})

const Separation = closed({
  /** rate at which measured mixtures like this one separated, 0 to 1; null outside of what was measured */
  rate: Type.Union([closed({ rate: Type.Number(), min: Type.Number(), max: Type.Number() }), Type.Null()]),
  outside: Type.Array(Type.String()),
})

/** Active matter of a wash as a share of the formula, whole and by charge. */
const Wash = closed({
  active_percent: Type.Number(),
  anionic_percent: Type.Number(),
  amphoteric_percent: Type.Number(),
  nonionic_percent: Type.Number(),
  cationic_percent: Type.Number(),
  strengthUnknown: Type.Array(Type.String()),
  separation: Type.Optional(Separation),
})

export const CheckReply = closed({
  verdict: Verdict,
  findings: Type.Array(Finding),
  windows: Type.Array(
    closed({
      ingredient: Type.String(),
      keeps_ph: Type.Optional(Window),
      works_ph: Type.Optional(Window),
      heat_max_c: Type.Optional(Type.Number()),
    }),
  ),
  /** the pH that every line accepts, or null where there is none */
  common_ph: Type.Union([Window, Type.Null()]),
  roles: Type.Array(
    closed({
      ingredient: Type.String(),
      inci: Type.String(),
      share_percent: Type.Number(),
      phase: Type.String(),
      strength_percent: Type.Optional(
        Type.Number({ description: 'Active matter counted with; typical value of the record unless stated' }),
      ),
      roles: Type.Array(closed({ role: Type.String(), label: Type.String() })),
    }),
  ),
  form: Form,
  formDerived: Type.Boolean(),
  wash: Type.Optional(Wash),
  graphVersion: Type.String(),
})
export type CheckReply = Static<typeof CheckReply>

export const checkRoute = {
  method: 'POST',
  url: '/api/check',
  schema: { body: CheckBody, response: { 200: CheckReply, '4xx': ErrorReply } },
} as const
