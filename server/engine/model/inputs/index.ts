import type { Static } from 'typebox'
import { ACIDS_INPUTS } from './acids.ts'
import { EMULSION_INPUTS } from './emulsions.ts'
import { MICROBE_INPUTS } from './microbes.ts'
import { MIXING_INPUTS } from './mixing.ts'
import { OIL_INPUTS } from './oils.ts'
import { PRESERVATION_INPUTS } from './preservation.ts'
import { SURFACTANT_INPUTS } from './surfactants.ts'

/** Schema of the input of every calculation, by name; one file a topic. */
export const CALCULATION_INPUTS = {
  ...ACIDS_INPUTS,
  ...EMULSION_INPUTS,
  ...MICROBE_INPUTS,
  ...MIXING_INPUTS,
  ...OIL_INPUTS,
  ...PRESERVATION_INPUTS,
  ...SURFACTANT_INPUTS,
}

export type CalculationName = keyof typeof CALCULATION_INPUTS
export type CalculationInput<N extends CalculationName> = Static<(typeof CALCULATION_INPUTS)[N]>
