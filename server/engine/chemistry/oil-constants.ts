import { mustBeIn } from '#engine/units/must-be-in.ts'
import { readFattyAcid } from './fatty-acid.ts'

export const IODINE_G_PER_MOL = 253.81
export const KOH_MG_PER_MOL = 56106
export const GLYCERYL_LESS_WATER_G_PER_MOL = 38.049 // C3H2: glycerol less three water

/** What a profile adds up to, per so many grams of acids as its shares say. */
export interface ProfileSums {
  /** grams of acids with a readable name */
  share: number
  moles: number
  doubleBondMoles: number
  /** grams of triglyceride that these acids make */
  oilMass: number
}

/** Sums over a profile: moles by molar mass of each acid, not by the mean mass. */
export function sumsOfProfile(shares: Readonly<Record<string, number>>): ProfileSums {
  const sums = { share: 0, moles: 0, doubleBondMoles: 0, oilMass: 0 }
  for (const [name, share] of Object.entries(shares)) {
    const acid = readFattyAcid(name)
    if (!acid) continue
    sums.share += share
    sums.moles += share / acid.molar_mass
    sums.doubleBondMoles += (share / acid.molar_mass) * acid.doubleBonds
  }
  sums.oilMass = sums.share + (sums.moles / 3) * GLYCERYL_LESS_WATER_G_PER_MOL
  return sums
}

/**
 * Iodine value of a triglyceride from its fatty acids, each double bond taking up one I2.
 *
 * @param shares  mass share by acid, any scale (`{ 'C18:1': 70 }`)
 * @returns       g I2 per 100 g of oil, or null when no acid is known
 *
 * Holds for triglycerides, not for wax esters or hydrocarbons; ricinoleic acid reads about 3 low against Wijs.
 */
export function iodineValue(shares: Readonly<Record<string, number>>): number | null {
  const { moles, doubleBondMoles, oilMass } = sumsOfProfile(shares)
  if (moles === 0) return null
  return (doubleBondMoles * IODINE_G_PER_MOL * 100) / oilMass
}

/**
 * Saponification value of a triglyceride, with the molar average of its acids (the average by weight reads
 * seven units low for lauric oils).
 *
 * @param shares  mass share by acid, any scale
 * @returns       mg KOH per g of oil, or null when no acid is known
 */
export function saponificationValue(shares: Readonly<Record<string, number>>): number | null {
  const { moles, oilMass } = sumsOfProfile(shares)
  if (moles === 0) return null
  return (moles * KOH_MG_PER_MOL) / oilMass
}

/**
 * Saponification value of a molecule with so many bonds that take up KOH (esters and acid groups).
 *
 *   SV = bonds · 56106 / M
 *
 * @param molar_mass  [g/mol], 50 to 5000
 * @param bonds       ester bonds and acid groups per molecule [-], 0 for a hydrocarbon
 * @returns           mg KOH per g
 * @throws RangeError when an argument is out of range
 *
 * For wax esters, monoesters and free acids, which must not go through the relation for triglycerides.
 */
export function saponificationOfMolecule(molar_mass: number, bonds: number): number {
  mustBeIn('molar_mass', molar_mass, 50, 5000)
  mustBeIn('bonds', bonds, 0, 20)
  return (bonds * KOH_MG_PER_MOL) / molar_mass
}

/**
 * Iodine value of a molecule with so many double bonds: IV = bonds · 253.81 · 100 / M.
 *
 * @param molar_mass    [g/mol], 50 to 5000
 * @param double_bonds  double bonds between carbons per molecule [-]
 * @returns             g I2 per 100 g
 * @throws RangeError when an argument is out of range
 */
export function iodineOfMolecule(molar_mass: number, double_bonds: number): number {
  mustBeIn('molar_mass', molar_mass, 50, 5000)
  mustBeIn('double_bonds', double_bonds, 0, 30)
  return (double_bonds * IODINE_G_PER_MOL * 100) / molar_mass
}

/** Acids under this share are left out of a comparison unless the other oil has more of them. */
const FLOOR_PERCENT = 1

/** Cosine of the angle between two fatty-acid profiles: 1 for the same proportions, 0 for no acid in common. */
export function profileCosine(a: Readonly<Record<string, number>>, b: Readonly<Record<string, number>>): number {
  const acids = new Set([...Object.keys(a), ...Object.keys(b)])
  let dot = 0
  let squareA = 0
  let squareB = 0
  for (const acid of acids) {
    const [x, y] = [a[acid] ?? 0, b[acid] ?? 0]
    if (Math.max(x, y) < FLOOR_PERCENT) continue
    dot += x * y
    squareA += x * x
    squareB += y * y
  }
  return squareA === 0 || squareB === 0 ? 0 : dot / Math.sqrt(squareA * squareB)
}
