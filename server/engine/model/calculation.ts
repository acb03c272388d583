import { Type } from 'typebox'
import type { Static } from 'typebox'

const closed = { additionalProperties: false }

/** One line of the working: what is done, the relation with its numbers filled in, and what comes out. */
export const Step = Type.Object(
  { text: Type.String(), expression: Type.String(), value: Type.Number(), unit: Type.String() },
  closed,
)
export type Step = Static<typeof Step>

/** A textbook calculation worked out: results by name (unit in the name), steps, range of validity, sources. */
export const Worked = Type.Object(
  {
    values: Type.Record(Type.String(), Type.Number()),
    steps: Type.Array(Step),
    range: Type.String({ description: 'Where the relation holds' }),
    sources: Type.Array(Type.String()),
  },
  closed,
)
export type Worked = Static<typeof Worked>
