import { Type } from 'typebox'
import { oneOf } from '#engine/model/one-of.ts'

const closed = { additionalProperties: false }
const cmc = Type.Number({ exclusiveMinimum: 0, maximum: 10_000 })

/** Inputs of the calculations about surfactants, by name. */
export const SURFACTANT_INPUTS = {
  'mixed-micelle-interaction': Type.Object(
    {
      cmc_1_mmol_per_l: cmc,
      cmc_2_mmol_per_l: cmc,
      mixed_cmc_mmol_per_l: cmc,
      mole_fraction_1: Type.Number({ exclusiveMinimum: 0, exclusiveMaximum: 1 }),
    },
    closed,
  ),
  'curvature-of-blend': Type.Object(
    {
      parts: Type.Array(
        Type.Object(
          {
            share_percent: Type.Number({ exclusiveMinimum: 0, maximum: 100 }),
            molar_mass: Type.Number({ minimum: 100, maximum: 10_000 }),
            curvature: Type.Number({ minimum: -15, maximum: 15 }),
          },
          closed,
        ),
        { minItems: 1, maxItems: 100 },
      ),
    },
    closed,
  ),
  'hydrophilic-lipophilic-deviation': Type.Object(
    {
      surfactant: oneOf('anionic', 'ethoxylate'),
      salt_g_per_100_ml: Type.Number({ minimum: 0, maximum: 35 }),
      oil_eacn: Type.Number({ minimum: -10, maximum: 40 }),
      curvature: Type.Number({ minimum: -15, maximum: 15 }),
      temp_c: Type.Number({ minimum: 0, maximum: 95 }),
    },
    closed,
  ),
  'optimum-salinity': Type.Object(
    {
      oil_eacn: Type.Number({ minimum: -10, maximum: 40 }),
      curvature: Type.Number({ minimum: -15, maximum: 15 }),
      temp_c: Type.Number({ minimum: 0, maximum: 95 }),
    },
    closed,
  ),
}
