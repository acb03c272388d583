import { Type } from 'typebox'
import { FATTY_ACID_NAME } from '#engine/model/fatty-acid-name.ts'
import { Id } from '#engine/model/formula.ts'
import { oneOf } from '#engine/model/one-of.ts'

const closed = { additionalProperties: false }
const share = Type.Number({ exclusiveMinimum: 0, maximum: 100 })

const Acid = Type.String({ pattern: FATTY_ACID_NAME, maxLength: 12 })

/** One of the two: an oil of the records, or its fatty acids. */
const oilOrAcids = () =>
  Type.Object(
    {
      ingredient: Type.Optional(Id),
      fatty_acids: Type.Optional(
        Type.Array(Type.Object({ acid: Acid, share_percent: share }, closed), { minItems: 1, maxItems: 40 }),
      ),
    },
    closed,
  )

/** Inputs of the calculations about oils and soap, by name. */
export const OIL_INPUTS = {
  'iodine-value': oilOrAcids(),
  'saponification-value': oilOrAcids(),
  oxidizability: oilOrAcids(),
  'profile-distance': Type.Object({ from: Id, to: Id }, closed),
  'lye-for-soap': Type.Object(
    {
      fats: Type.Array(Type.Object({ ingredient: Id, share_percent: share }, closed), { minItems: 1, maxItems: 30 }),
      fats_g: Type.Number({ exclusiveMinimum: 0, maximum: 1_000_000 }),
      superfat_percent: Type.Number({ minimum: 0, maximum: 90 }),
      lye: oneOf('naoh', 'koh'),
      purity_percent: Type.Number({ minimum: 1, maximum: 100 }),
    },
    closed,
  ),
}
