import type { Static } from 'typebox'
import { MIXING_INPUTS } from './mixing.ts'
import { PRESERVATION_INPUTS } from './preservation.ts'

/** Schema of the input of every calculation, by name; one file a topic. */
export const CALCULATION_INPUTS = { ...MIXING_INPUTS, ...PRESERVATION_INPUTS }

export type CalculationName = keyof typeof CALCULATION_INPUTS
export type CalculationInput<N extends CalculationName> = Static<(typeof CALCULATION_INPUTS)[N]>
