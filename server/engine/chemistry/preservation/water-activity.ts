import { mustBeIn } from '#engine/units/must-be-in.ts'

/** One thing dissolved in water. */
export interface Solute {
  grams: number
  molar_mass: number
  /** particles it falls into: 2 for a salt of one charge each */
  particles: number
  /** constant of Norrish's relation [-], where it is known */
  norrish?: number
}

const WATER_MOLAR_MASS = 18.015

/**
 * Water activity of a solution.
 *
 *   a = x · exp(-K · y²) for each solute by itself in all of the water (x, y: mole fractions of water and solute);
 *   the activities are multiplied
 *
 * Without a constant K the solute counts as ideal (K = 0, Raoult's law), which leaves the estimate too high for sugars
 * and polyols: rather too little of a hurdle than too much.
 *
 * @param water_g  water [g], above 0
 * @returns        activity [-], 0 to 1
 * @throws RangeError when an argument is out of range
 *
 * Sugars and polyols to an activity of about 0.3; salts as if all of their ions counted, which is a little too low an
 * activity below 1 mol/kg. Source: Norrish's relation and its constants as quoted in NORRISH_ALDITOLS; Ross's product
 * for mixtures from memory.
 */
export function waterActivity(water_g: number, solutes: readonly Solute[]): number {
  mustBeIn('water_g', water_g, Number.MIN_VALUE, 1e9)
  const water_mol = water_g / WATER_MOLAR_MASS
  return solutes.reduce((activity, { grams, molar_mass, particles, norrish = 0 }) => {
    mustBeIn('grams', grams, 0, 1e9)
    mustBeIn('molar_mass', molar_mass, 1, 1e7)
    mustBeIn('particles', particles, 1, 10)
    mustBeIn('norrish', norrish, 0, 10)
    const mol = (grams / molar_mass) * particles
    const water = water_mol / (water_mol + mol)
    return activity * water * Math.exp(-norrish * (1 - water) ** 2)
  }, 1)
}
