import { Type } from 'typebox'

const closed = { additionalProperties: false }
const share = Type.Number({ exclusiveMinimum: 0, maximum: 100 })
const hlb = Type.Number({ minimum: 0, maximum: 50 })
const some = { minItems: 1, maxItems: 100 }

/** Inputs of the calculations about emulsions, by name. */
export const EMULSION_INPUTS = {
  'required-hlb': Type.Object(
    { oils: Type.Array(Type.Object({ share_percent: share, required_hlb: hlb }, closed), some) },
    closed,
  ),
  'blend-hlb': Type.Object(
    { emulsifiers: Type.Array(Type.Object({ share_percent: share, hlb }, closed), some) },
    closed,
  ),
  'emulsifier-pair': Type.Object({ target_hlb: hlb, high_hlb: hlb, low_hlb: hlb }, closed),
  'emulsifier-amount': Type.Object({ oil_percent: share }, closed),
  'hlb-by-oxyethylene': Type.Object(
    {
      hydrophobe_molar_mass: Type.Number({ minimum: 100, maximum: 2000 }),
      oxyethylene_units: Type.Number({ minimum: 0, maximum: 500 }),
    },
    closed,
  ),
  'hlb-by-saponification': Type.Object(
    {
      saponification_value: Type.Number({ minimum: 0, maximum: 500 }),
      acid_value: Type.Number({ exclusiveMinimum: 0, maximum: 500 }),
    },
    closed,
  ),
  'hlb-by-groups': Type.Object(
    {
      hydrophilic: Type.Array(Type.String({ minLength: 1, maxLength: 40 }), { minItems: 1, maxItems: 200 }),
      lipophilic_groups: Type.Number({ minimum: 0, maximum: 200 }),
    },
    closed,
  ),
  'creaming-rate': Type.Object(
    {
      droplet_um: Type.Number({ exclusiveMinimum: 0, maximum: 1000 }),
      density_gap_kg_per_m3: Type.Number({ minimum: -2000, maximum: 2000 }),
      viscosity_mpa_s: Type.Number({ minimum: 0.1, maximum: 10_000_000 }),
    },
    closed,
  ),
  'gum-viscosity': Type.Object(
    {
      known_percent: Type.Number({ minimum: 0.01, maximum: 20 }),
      known_mpa_s: Type.Number({ exclusiveMinimum: 0, maximum: 1_000_000 }),
      wanted_percent: Type.Number({ minimum: 0.005, maximum: 40 }),
    },
    closed,
  ),
}
