import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Claim } from '#engine/model/claim.ts'
import { Because } from '#engine/model/finding.ts'
import { Formula, Id } from '#engine/model/formula.ts'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'

const nullable = <T extends Parameters<typeof Type.Union>[0][number]>(schema: T, description: string) =>
  Type.Union([schema, Type.Null()], { description })

const Range = closed({ min: Type.Optional(Type.Number()), max: Type.Optional(Type.Number()) })
const Kind = oneOf('keeps', 'works')

const line = {
  ingredient: Type.String(),
  inci: Type.String(),
  kind: Kind,
  window: Range,
  claim: Claim,
}
const LineWindow = Type.Object(line, {
  additionalProperties: false,
  description:
    'One pH window of one line. keeps: it does not split, fall out or lose its body; works: it preserves, thickens, chelates or conditions',
})
const Objection = closed({ ...line, distance_ph: Type.Number({ description: 'How far the pH lies outside' }) })

const End = nullable(
  closed({ ph: Type.Number(), setBy: Type.Array(LineWindow) }),
  'An end of the window with the lines that set it; null where no line sets one',
)

const common = {
  window: nullable(Range, 'The pH that all known windows accept; an end left out is open; null where there is none'),
  low: End,
  high: End,
  gap: nullable(
    closed({ min: Type.Number(), max: Type.Number() }),
    'Where there is no common pH: from the lowest upper end to the highest lower end',
  ),
  excludes: Type.Array(
    closed({ lower: LineWindow, upper: LineWindow, gap: closed({ min: Type.Number(), max: Type.Number() }) }),
    {
      description:
        'Pairs of windows that do not meet, with the gap between them, the widest first; empty where all meet',
    },
  ),
}
const Common = closed(common)
const Verdict = oneOf('inside', 'outside', 'not-known')

export const PhWindowBody = closed({ formula: Formula })

export const PhWindowReply = closed({
  ...common,
  keeps: Common,
  works: Common,
  unknown: Type.Array(Type.String(), {
    description: 'Lines without a known window: whether they bear a pH is not known',
  }),
  ph: closed({
    value: nullable(Type.Number(), 'The pH of the formula, as stated'),
    verdict: Verdict,
    objections: Type.Array(Objection),
  }),
  notes: Type.Array(Type.String()),
  sources: Type.Array(Type.String()),
  graphVersion: Type.String(),
})
export type PhWindowReply = Static<typeof PhWindowReply>

const Ph = Type.Number({ minimum: 0, maximum: 14 })
const MOST_READINGS = 20

export const PhAdjustBody = closed({
  formula: Formula,
  batch_g: Type.Number({ exclusiveMinimum: 0, maximum: 1_000_000 }),
  target_ph: Ph,
  with: Type.Optional(
    Type.Unsafe<string>({
      ...Id,
      description: 'Acid or base by its id; left out: one is proposed that suits the way and the lines',
    }),
  ),
  strength_percent: Type.Optional(
    Type.Number({
      exclusiveMinimum: 0,
      maximum: 100,
      description: 'Of the solution that is weighed, such as 10 for 10 % sodium hydroxide; left out: pure',
    }),
  ),
  measured: Type.Optional(
    Type.Array(closed({ added_g: Type.Number({ minimum: 0, maximum: 1_000_000 }), ph: Ph }), {
      maxItems: MOST_READINGS,
      description: 'Readings in this batch: all that went in up to each, the first at 0 g',
    }),
  ),
  temp_c: Type.Optional(Type.Number({ minimum: 0, maximum: 60, description: 'At which is measured; left out: 25' })),
  diluted: Type.Optional(
    Type.Number({
      exclusiveMinimum: 0,
      maximum: 100,
      description: 'Product in the dilution that was read [%], such as 10; left out: read neat',
    }),
  ),
  meter: Type.Optional(oneOf('meter', 'strips')),
})
export type PhAdjustBody = Static<typeof PhAdjustBody>

const Span = closed({ min: Type.Number(), max: Type.Number() })

const Way = closed({
  way: oneOf('composition', 'measured'),
  verdict: Type.Unsafe<'known' | 'range' | 'not-known'>({
    type: 'string',
    enum: ['known', 'range', 'not-known'],
    description:
      'known: worked out from what is all known; range: something is not known and the range covers it; not-known: this way gives no dose',
  }),
  dose_g: nullable(Span, 'Total from 0 g on, of what is weighed (solution, where a strength was stated)'),
  likely_g: nullable(Type.Number(), 'Inside the range, where one value is likelier than the others'),
  still_g: nullable(Span, 'Of that not yet in, after the last reading'),
  steps: Type.Array(
    closed({
      add_g: Type.Number({ description: 'No larger than the step before it' }),
      of: Type.String(),
      then: Type.String(),
    }),
    { description: 'What to add next, and to measure after each; they stop short of the target on purpose' },
  ),
  uncertainty: Type.String(),
  because: Type.Array(Because),
  unknown: Type.Array(closed({ ingredient: Type.Optional(Type.String()), says: Type.String() })),
})

export const PhAdjustReply = closed({
  target_ph: Type.Number(),
  start: nullable(
    closed({ ph: Type.Number(), from: oneOf('measured', 'formula', 'composition') }),
    'Where it starts: the first reading, the pH stated with the formula, or worked out from lines that are all known',
  ),
  with: nullable(
    closed({
      ingredient: Type.String(),
      inci: Type.String(),
      kind: oneOf('acid', 'base'),
      strength_percent: Type.Number(),
      proposed: Type.Boolean(),
    }),
    'What is dosed; null where the way is not known and nothing was chosen',
  ),
  reading: closed({
    meter: oneOf('meter', 'strips'),
    error_ph: Type.Number({ description: 'How far a reading may be off' }),
    temp_c: Type.Number(),
    diluted_percent: nullable(Type.Number(), 'Product in the dilution that was read'),
  }),
  window: closed({
    common: nullable(Range, 'The pH that all lines with a known window accept'),
    low: End,
    high: End,
    verdict: Type.Unsafe<'inside' | 'outside' | 'not-known'>({
      type: 'string',
      enum: ['inside', 'outside', 'not-known'],
      description: 'Of the target',
    }),
    objections: Type.Array(Objection, { description: 'Lines that object to the target' }),
    unknown: Type.Array(Type.String()),
  }),
  ways: Type.Array(Way),
  dilutionTest: nullable(
    closed({ product_percent: Type.Number(), ph: Type.Number(), ph_diluted: Type.Number(), text: Type.String() }),
    'What a dilution reads when the product is at the target; null where the lines are not known enough',
  ),
  warnings: Type.Array(Type.String(), { description: 'What misleads in this product' }),
  cautions: Type.Array(Type.String(), { description: 'What can hurt' }),
  sources: Type.Array(Type.String()),
  graphVersion: Type.String(),
})
export type PhAdjustReply = Static<typeof PhAdjustReply>

export const phWindowRoute = {
  method: 'POST',
  url: '/api/ph/window',
  schema: { body: PhWindowBody, response: { 200: PhWindowReply, '4xx': ErrorReply } },
} as const

export const phAdjustRoute = {
  method: 'POST',
  url: '/api/ph/adjust',
  schema: { body: PhAdjustBody, response: { 200: PhAdjustReply, '4xx': ErrorReply } },
} as const
