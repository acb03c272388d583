import type { Mixture } from './mixture.ts'
import { solvePh } from './solve-ph.ts'

const STEP_MOL_PER_L = 1e-6

/**
 * Buffer capacity: strong base that raises the pH by one, at the pH of the mixture.
 *
 *   β = d(base) / d(pH)
 *
 * @returns [mol/L per unit of pH], with activities following the salt that the base brings
 *
 * By difference over 2e-6 mol/L of base. Range of `solvePh`.
 */
export function bufferCapacity(mixture: Mixture): number {
  const phWith = (mol_per_l: number): number =>
    solvePh({
      ...mixture,
      ions: [...mixture.ions, { charge: Math.sign(mol_per_l), mol_per_l: Math.abs(mol_per_l) }],
    }).ph
  return (2 * STEP_MOL_PER_L) / (phWith(STEP_MOL_PER_L) - phWith(-STEP_MOL_PER_L))
}
