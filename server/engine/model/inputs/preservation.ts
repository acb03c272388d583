import { Type } from 'typebox'

const closed = { additionalProperties: false }
const percent = Type.Number({ exclusiveMinimum: 0, maximum: 100 })
const ph = Type.Number({ minimum: 0, maximum: 14 })
const pka = Type.Number({ minimum: -2, maximum: 16 })
const partition_ratio = Type.Number({ minimum: 0, maximum: 1e6, description: 'Oil over water at equilibrium' })
const oil_to_water = Type.Number({ minimum: 0, maximum: 1000, description: 'Volume of oil over volume of water' })

/** Inputs of the calculations about preservatives in water, oil and micelles, by name. */
export const PRESERVATION_INPUTS = {
  'two-phase-partition': Type.Object(
    { total_percent: percent, partition_ratio, oil_to_water, water_solubility_percent: Type.Optional(percent) },
    closed,
  ),
  'partition-with-micelles': Type.Object(
    {
      total_percent: percent,
      partition_ratio,
      oil_to_water,
      binding_per_percent: Type.Number({ minimum: 0, maximum: 1000 }),
      surfactant_percent: Type.Number({ minimum: 0, maximum: 100, description: 'Of the water phase' }),
    },
    closed,
  ),
  'acid-in-emulsion': Type.Object({ undissociated_percent: percent, ph, pka, partition_ratio, oil_to_water }, closed),
  'acid-solubility': Type.Object({ intrinsic_solubility_percent: percent, ph, pka }, closed),
}
