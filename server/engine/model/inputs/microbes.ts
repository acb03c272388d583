import { Type } from 'typebox'

const closed = { additionalProperties: false }
const count = Type.Number({ exclusiveMinimum: 0, maximum: 1e12 })
const countOrNone = Type.Number({ minimum: 0, maximum: 1e12 })

/** Inputs of the calculations about counts of germs, by name. */
export const MICROBE_INPUTS = {
  'log-reduction': Type.Object(
    { start_cfu_per_g: count, end_cfu_per_g: countOrNone, detection_limit_cfu_per_g: Type.Optional(count) },
    closed,
  ),
  'd-value': Type.Object(
    {
      start_cfu_per_g: count,
      end_cfu_per_g: countOrNone,
      hours: Type.Number({ exclusiveMinimum: 0, maximum: 10_000 }),
    },
    closed,
  ),
}
