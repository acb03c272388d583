import { mustBeIn } from '#engine/units/must-be-in.ts'
import { KOH_MG_PER_MOL } from './oil-constants.ts'

export type Lye = 'naoh' | 'koh'

/** Molar mass of the pure alkali [g/mol]. */
export const LYE_G_PER_MOL: Readonly<Record<Lye, number>> = { naoh: 39.997, koh: KOH_MG_PER_MOL / 1000 }

/** What the alkali is worked out from. */
export interface SoapBatch {
  /** mg KOH that one gram of the fats binds */
  saponification_value: number
  fats_g: number
  /** share of the fats that is to stay unsaponified [%] */
  superfat_percent: number
  lye: Lye
  /** alkali in the lye as supplied [%] */
  purity_percent: number
}

/**
 * Alkali that turns fats into soap.
 *
 *   lye = fats · SV / 1000 · (M / 56.106) · (1 − superfat) / purity
 *
 * @returns mass of the lye as supplied [g]
 * @throws RangeError when an argument is out of range
 *
 * The saponification value of a natural fat varies by some per cent from lot to lot: the superfat has to be larger than
 * that, or lye stays free and burns. Source: definition of the saponification value; atomic-weights-mem.
 */
export function lyeForFats({ saponification_value, fats_g, superfat_percent, lye, purity_percent }: SoapBatch): number {
  mustBeIn('saponification_value', saponification_value, 1, 500)
  mustBeIn('fats_g', fats_g, 1e-6, 1_000_000)
  mustBeIn('superfat_percent', superfat_percent, 0, 90)
  mustBeIn('purity_percent', purity_percent, 1, 100)
  const moles = (fats_g * saponification_value) / KOH_MG_PER_MOL
  return (moles * LYE_G_PER_MOL[lye] * (1 - superfat_percent / 100)) / (purity_percent / 100)
}
