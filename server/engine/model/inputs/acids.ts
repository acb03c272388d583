import { Type } from 'typebox'

const closed = { additionalProperties: false }
const MOST_MOL_PER_L = 10
const mol_per_l = Type.Number({ minimum: 0, maximum: MOST_MOL_PER_L })
const name = Type.String({ minLength: 1, maxLength: 200 })

const systems = Type.Array(Type.Object({ acid: name, mol_per_l }, closed), {
  maxItems: 20,
  description: 'Acids and bases by name, total of all forms; a salt by name brings its own counter-ions',
})
const ions = Type.Array(Type.Object({ charge: Type.Integer({ minimum: -6, maximum: 6 }), mol_per_l }, closed), {
  maxItems: 30,
  description: 'Ions that take no part in acid-base reactions, such as sodium and chloride',
})
const temp_c = Type.Number({ minimum: 0, maximum: 100, description: 'Temperature of the solution [°C]' })
const mixture = { systems, ions, temp_c }
const mass_g = { maximum: 1_000_000 }

/** Inputs of the calculations about acids and bases in water, by name. */
export const ACIDS_INPUTS = {
  'undissociated-share': Type.Object(
    { ph: Type.Number({ minimum: 0, maximum: 14 }), pka: Type.Number({ minimum: -2, maximum: 16 }) },
    closed,
  ),
  'buffer-ph': Type.Object(mixture, closed),
  'acid-dose': Type.Object({ ...mixture, add: name, target_ph: Type.Number({ minimum: 0, maximum: 14 }) }, closed),
  'dilution-ph': Type.Object(
    {
      ...mixture,
      product_g: Type.Number({ exclusiveMinimum: 0, ...mass_g }),
      water_g: Type.Number({ minimum: 0, ...mass_g }),
    },
    closed,
  ),
}
