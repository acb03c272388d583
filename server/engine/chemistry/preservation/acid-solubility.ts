import { mustBeIn } from '#engine/units/must-be-in.ts'
import { ionsForEachAcid } from './acid-in-emulsion.ts'

/**
 * Solubility of a weak one-step acid in water at a pH.
 *
 *   S = S0 · (1 + 10^(ph - pka))
 *
 * @param intrinsic_solubility_percent  solubility of the undissociated acid [%], above 0 to 100
 * @param ph                            pH of the saturated solution [-], 0 to 14
 * @param pka                           acid constant at the same temperature [-], -2 to 16
 * @returns                             solubility [%], all forms counted as the acid
 * @throws RangeError when an argument is out of range
 *
 * An upper bound above the pKa: the salt has a solubility of its own, and activity lowers it. Sorbic acid at pH 5.9
 * dissolves to half of what the relation gives.
 * Source: textbook relation; ADDBOOK, p. 733, agrees at pH 3.1 and disagrees at pH 5.9.
 */
export function acidSolubility(intrinsic_solubility_percent: number, ph: number, pka: number): number {
  mustBeIn('intrinsic_solubility_percent', intrinsic_solubility_percent, Number.MIN_VALUE, 100)
  mustBeIn('ph', ph, 0, 14)
  mustBeIn('pka', pka, -2, 16)
  return intrinsic_solubility_percent * (1 + ionsForEachAcid(ph, pka))
}
