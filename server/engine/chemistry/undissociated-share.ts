import { mustBeIn } from '#engine/units/must-be-in.ts'

/**
 * Share of a weak one-step acid that is undissociated in the water phase.
 *
 *   share = 1 / (1 + 10^(ph - pka))
 *
 * @param ph   pH of the water phase [-], 0 to 14
 * @param pka  acid constant at the same temperature [-], -2 to 16
 * @returns    mole share [-], 0 to 1
 * @throws RangeError when an argument is out of range or not a number
 *
 * Holds for dilute water only: acid that moves into oil or into micelles is not counted.
 * Source: ANDERSON1967, p. 211, used there for benzoic acid.
 */
export function undissociatedShare(ph: number, pka: number): number {
  mustBeIn('ph', ph, 0, 14)
  mustBeIn('pka', pka, -2, 16)
  return 1 / (1 + 10 ** (ph - pka))
}
