import { Type } from 'typebox'
import type { Static } from 'typebox'
import { oneOf } from './one-of.ts'
import { Because, Finding, Verdict } from './finding.ts'
import { Form, Formula, Id } from './formula.ts'

const closed = { additionalProperties: false }
const Text = Type.String()
const LineKey = Type.String({
  description: 'Key of a line of this sheet: the id, with /2, /3 where one id has several',
})
const StepId = Type.String({ description: 'Id of a step of this sheet' })

/** What a person says about the batch beside the formula. */
export const BatchAsk = Type.Object(
  {
    formula: Formula,
    batch_g: Type.Number({ exclusiveMinimum: 0, maximum: 1_000_000 }),
    step_g: Type.Optional(
      Type.Number({
        minimum: 0.001,
        maximum: 1000,
        description: 'Smallest step that the scale shows; 0.1 if not said',
      }),
    ),
    overage_percent: Type.Optional(
      Type.Number({ minimum: 0, maximum: 100, description: 'Weighed on top for what stays in beaker and pump' }),
    ),
    prices_per_kg: Type.Optional(
      Type.Record(Id, Type.Number({ minimum: 0, maximum: 10_000_000 }), { ...closed, maxProperties: 500 }),
    ),
    currency: Type.Optional(Type.String({ minLength: 1, maxLength: 10 })),
    date: Type.Optional(Type.String({ pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'Day of making' })),
    batchCode: Type.Optional(Type.String({ minLength: 1, maxLength: 60 })),
  },
  closed,
)
export type BatchAsk = Static<typeof BatchAsk>

/** A temperature at the bench with where it comes from: a claim, the recipe, or usual practice. */
export const Temperature = Type.Object(
  {
    min: Type.Optional(Type.Number()),
    max: Type.Optional(Type.Number()),
    because: Type.Array(Because, { minItems: 1 }),
  },
  closed,
)
export type Temperature = Static<typeof Temperature>

/** A time at the bench with where it comes from. */
export const Duration = Type.Object(
  {
    min: Type.Number(),
    max: Type.Number(),
    unit: oneOf('minutes', 'hours', 'days', 'weeks'),
    because: Type.Array(Because, { minItems: 1 }),
  },
  closed,
)
export type Duration = Static<typeof Duration>

/** One step of the work: a node of the order graph. */
export const BatchStep = Type.Object(
  {
    id: StepId,
    title: Text,
    text: Text,
    adds: Type.Array(LineKey, { description: 'Lines that go in at this step' }),
    uses: Type.Array(StepId, { description: 'Steps whose mixture goes in at this step' }),
    temp_c: Type.Optional(Temperature),
    time: Type.Optional(Duration),
    holds_g: Type.Optional(
      Type.Number({ description: 'What the vessel should hold after this step, without its tare' }),
    ),
    why: Text,
    because: Type.Array(Because),
    sources: Type.Array(Text),
    cautions: Type.Array(Text),
  },
  closed,
)
export type BatchStep = Static<typeof BatchStep>

export const BatchEdge = Type.Object({ from: StepId, relation: oneOf('before'), to: StepId }, closed)
export type BatchEdge = Static<typeof BatchEdge>

export const Portion = Type.Object({ step: StepId, weigh_g: Type.Number() }, closed)
export type Portion = Static<typeof Portion>

export const BatchLine = Type.Object(
  {
    line: LineKey,
    ingredient: Id,
    inci: Text,
    share_percent: Type.Number(),
    weigh_g: Type.Number(),
    phase: Type.String({ description: 'Letter of the phase in which it is weighed' }),
    portions: Type.Array(Portion, { description: 'Where it goes; more than one when it is split' }),
    reasons: Type.Array(Because, { description: 'Why it goes there' }),
    strength_percent: Type.Optional(Type.Number()),
    strengthFrom: Type.Optional(oneOf('stated', 'record')),
    cautions: Type.Array(Text),
    cost: Type.Optional(Type.Number()),
  },
  closed,
)
export type BatchLine = Static<typeof BatchLine>

/** Lines that are weighed together because they go in together. */
export const BatchPhase = Type.Object(
  { phase: Text, title: Text, step: StepId, lines: Type.Array(LineKey), weigh_g: Type.Number() },
  closed,
)
export type BatchPhase = Static<typeof BatchPhase>

/** How to weigh what the scale cannot show: a stock of known strength, weighed in place of the line. */
export const Dilution = Type.Object(
  {
    strength_percent: Type.Number(),
    carrier: LineKey,
    pure_g: Type.Number(),
    carrier_g: Type.Number(),
    take_g: Type.Number({ description: 'Of the stock, in place of the line' }),
    less_carrier_g: Type.Number({ description: 'By this much less of the carrier is weighed' }),
  },
  closed,
)
export type Dilution = Static<typeof Dilution>

/** What has to be said about this batch, beside what the check says about the formula. */
export const BatchRemark = Type.Object(
  {
    kind: oneOf(
      'batch-rounded',
      'shares-scaled',
      'line-is-zero',
      'line-too-small',
      'moved',
      'too-hot-to-pour',
      'heat-differs',
      'ph-target-unknown',
      'unknown-heat',
      'unknown-strength',
      'unknown-phase',
      'unknown-dissolving',
    ),
    severity: oneOf('warn', 'note', 'unknown'),
    lines: Type.Array(LineKey),
    message: Text,
    remedy: Type.Optional(Text),
    dilution: Type.Optional(Dilution),
    because: Type.Array(Because),
  },
  closed,
)
export type BatchRemark = Static<typeof BatchRemark>

export const BatchCost = Type.Object(
  {
    currency: Type.Union([Type.String(), Type.Null()]),
    known: Type.Number({ description: 'Sum of the lines whose price is known' }),
    total: Type.Union([Type.Number(), Type.Null()], { description: 'Null while a price is missing' }),
    per_100_g: Type.Union([Type.Number(), Type.Null()]),
    missing: Type.Array(LineKey),
    unused: Type.Array(Id, { description: 'Priced, but no line of the formula' }),
  },
  closed,
)
export type BatchCost = Static<typeof BatchCost>

/** One look at the finished product: day after making, date when the day of making is known, and what to look for. */
export const Look = Type.Object({ day: Type.Number(), date: Type.Optional(Text), look: Text }, closed)
export type Look = Static<typeof Look>

export const BatchSheet = Type.Object(
  {
    batch_g: Type.Number(),
    overage_percent: Type.Number(),
    weighed_g: Type.Number({ description: 'Sum of all lines, a whole number of scale steps' }),
    step_g: Type.Number(),
    form: Form,
    formDerived: Type.Boolean(),
    process: oneOf('emulsion', 'one-phase', 'anhydrous', 'powder', 'soap', 'bar'),
    date: Type.Union([Text, Type.Null()]),
    batchCode: Type.Union([Text, Type.Null()]),
    lines: Type.Array(BatchLine),
    phases: Type.Array(BatchPhase),
    steps: Type.Array(BatchStep),
    edges: Type.Array(BatchEdge),
    order: Type.Array(StepId, { description: 'All steps in one line that keeps every edge' }),
    looks: Type.Array(Look),
    remarks: Type.Array(BatchRemark),
    cost: Type.Union([BatchCost, Type.Null()]),
    verdict: Verdict,
    findings: Type.Array(Finding),
  },
  closed,
)
export type BatchSheet = Static<typeof BatchSheet>
