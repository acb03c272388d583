import { Type } from 'typebox'

const closed = { additionalProperties: false }
const percent = Type.Number({ exclusiveMinimum: 0, maximum: 100 })

/** Inputs of the calculations about amounts, by name. */
export const MIXING_INPUTS = {
  'active-matter-dose': Type.Object(
    { old_percent: percent, old_active_percent: percent, new_active_percent: percent },
    closed,
  ),
}
