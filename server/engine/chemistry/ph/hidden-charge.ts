import { balanceIn, mediumAt } from './balance.ts'
import type { Additive } from './dose-to.ts'
import { withAdditive } from './dose-to.ts'
import { fixedPoint } from './find-root.ts'
import type { Ion, Mixture } from './mixture.ts'

/** No product that a reading is taken of passes this [mol/L]. */
const STRENGTH_MAX = 1000

/** A charge that nothing is known of, as an ion that takes no part. */
export const ionOf = (charge_mol_per_l: number): Ion => ({
  charge: Math.sign(charge_mol_per_l),
  mol_per_l: Math.abs(charge_mol_per_l),
})

/** What was there when a reading was taken. */
export interface Reading {
  /** addition up to here [mol/L of water] */
  added_mol_per_l: number
  ph: number
}

/**
 * Charge that everything unnamed in a product carries at a reading: alkali left in a raw material, soap, unnamed acids.
 *
 *   hidden = -surplus of what is known, at the pH that was read
 *
 * @param known     what is known to be in it [mol/L]
 * @param additive  what one mole of the addition brings
 * @param reading   how much went in and what was read
 * @returns         [mol/L]; falls with rising pH, because protons leave
 *
 * The unnamed charge counts as single ions towards the ionic strength.
 */
export function hiddenCharge(known: Mixture, additive: Additive, reading: Reading): number {
  const medium = mediumAt(known.temp_c)
  const mixture = withAdditive(known, additive, reading.added_mol_per_l)
  const hiddenAt = (ionic_strength: number): number => -balanceIn(mixture, medium(ionic_strength))(reading.ph).surplus
  const strengthAfter = (ionic_strength: number): number =>
    balanceIn(mixture, medium(ionic_strength))(reading.ph).ionic_strength + Math.abs(hiddenAt(ionic_strength)) / 2
  return hiddenAt(fixedPoint(strengthAfter, [0, STRENGTH_MAX], 1e-12))
}
