import { balanceIn, mediumAt } from './balance.ts'
import { fixedPoint } from './find-root.ts'
import type { AcidSystem, Ion, Mixture } from './mixture.ts'
import { solvePh } from './solve-ph.ts'

/** What one mole of an acid, base or salt brings: acid systems and free ions, each per mole. */
export interface Additive {
  systems: readonly AcidSystem[]
  ions: readonly Ion[]
}

/** Beyond this dose [mol/L] the additive is no longer a small correction of a watery solution. */
export const DOSE_MAX_MOL_PER_L = 10

/** A mixture with so much of an additive in it; its own volume is not counted. */
export const withAdditive = (mixture: Mixture, additive: Additive, dose_mol_per_l: number): Mixture => ({
  ...mixture,
  systems: [
    ...mixture.systems,
    ...additive.systems.map((system) => ({ ...system, mol_per_l: system.mol_per_l * dose_mol_per_l })),
  ],
  ions: [...mixture.ions, ...additive.ions.map((ion) => ({ ...ion, mol_per_l: ion.mol_per_l * dose_mol_per_l }))],
})

/** Charge that one mole of an additive carries at a pH, in water of an ionic strength [mol/mol]; negative for an acid. */
export function chargePerMole(additive: Additive, ph: number, at: { ionic_strength: number; temp_c: number }): number {
  const medium = mediumAt(at.temp_c)(at.ionic_strength)
  const ofWater = balanceIn({ systems: [], ions: [], temp_c: at.temp_c }, medium)(ph).surplus
  return balanceIn({ ...additive, temp_c: at.temp_c }, medium)(ph).surplus - ofWater
}

/** Which way the target lies and which way the additive pulls, at the target. */
export type Way = 'acid' | 'base' | 'none'

/** What has to go in to reach a pH. */
export const wayTo = (mixture: Mixture, target_ph: number): Way => {
  const { ph } = solvePh(mixture)
  if (Math.abs(ph - target_ph) < 1e-9) return 'none'
  return target_ph < ph ? 'acid' : 'base'
}

/**
 * Dose of an acid, base or salt that brings a mixture to a pH.
 *
 *   dose = -surplus(mixture) / charge per mole of additive, both at the target pH and the ionic strength there
 *
 * @param mixture    what is there [mol/L]
 * @param additive   what one mole of the addition brings
 * @param target_ph  pH to reach [-], 0 to 14
 * @returns          dose [mol/L]; null where the additive pulls the other way or cannot get there with 10 mol/L
 *
 * Closed vessel, nothing falls out, the volume of the addition not counted. Within the range of `solvePh`.
 */
export function doseTo(mixture: Mixture, additive: Additive, target_ph: number): number | null {
  const medium = mediumAt(mixture.temp_c)
  const doseAt = (ionic_strength: number): number => {
    const surplus = balanceIn(mixture, medium(ionic_strength))(target_ph).surplus
    const charge = chargePerMole(additive, target_ph, { ionic_strength, temp_c: mixture.temp_c })
    if (Math.abs(surplus) < NOTHING_MOL_PER_L) return 0
    const dose = -surplus / charge
    return dose >= 0 && dose <= DOSE_MAX_MOL_PER_L ? dose : Number.NaN
  }
  const strengthAfter = (ionic_strength: number): number => {
    const dose = doseAt(ionic_strength)
    const whole = withAdditive(mixture, additive, Number.isNaN(dose) ? 0 : dose)
    return balanceIn(whole, medium(ionic_strength))(target_ph).ionic_strength
  }
  const strength = fixedPoint(strengthAfter, [0, STRENGTH_MAX], 1e-12)
  const dose = doseAt(strength)
  return Number.isNaN(dose) ? null : dose
}

/** Charges that are left over by no more than this are none. */
const NOTHING_MOL_PER_L = 1e-11

/** No solution of `DOSE_MAX_MOL_PER_L` passes this ionic strength [mol/L]. */
const STRENGTH_MAX = 5000
