import { mustBeIn } from '#engine/units/must-be-in.ts'

/** One surfactant of a blend: share by mass [%], molar mass [g/mol], characteristic curvature [-]. */
export interface CurvedPart {
  share_percent: number
  molar_mass: number
  curvature: number
}

/**
 * Characteristic curvature of a blend of surfactants, averaged by moles.
 *
 *   Cc = Σ (share / M) · Cc / Σ (share / M)
 *
 * @returns curvature of the blend [-]; negative is hydrophilic
 * @throws RangeError when the list is empty or a figure is out of range (molar mass 100 to 10,000, curvature −15 to 15)
 *
 * Ideal mixing: serves for many blends, not for anionic with cationic. Source: hld-mixtures (read, abstract).
 */
export function curvatureOfBlend(parts: readonly CurvedPart[]): number {
  if (parts.length === 0) throw new RangeError('parts: expected at least one part, got none')
  parts.forEach((part, index) => {
    mustBeIn(`parts/${index}/share_percent`, part.share_percent, 1e-6, 100)
    mustBeIn(`parts/${index}/molar_mass`, part.molar_mass, 100, 10_000)
    mustBeIn(`parts/${index}/curvature`, part.curvature, -15, 15)
  })
  const moles = parts.reduce((sum, part) => sum + part.share_percent / part.molar_mass, 0)
  return parts.reduce((sum, part) => sum + (part.share_percent / part.molar_mass) * part.curvature, 0) / moles
}

/** What the deviation is worked out from. */
export interface Deviation {
  /** salt in the water [g NaCl per 100 mL] */
  salt_g_per_100_ml: number
  /** equivalent alkane carbon number of the oil [-] */
  oil_eacn: number
  /** characteristic curvature of the surfactant [-] */
  curvature: number
  temp_c: number
}

/** Coefficients of one kind of surfactant: per EACN, per kelvin and, for nonionics, per g NaCl in 100 mL. */
export interface DeviationCoefficients {
  oil: number
  temperature: number
  salt: number
}

function mustHold({ salt_g_per_100_ml, oil_eacn, curvature, temp_c }: Deviation, least_salt: number): void {
  mustBeIn('salt_g_per_100_ml', salt_g_per_100_ml, least_salt, 35)
  mustBeIn('oil_eacn', oil_eacn, -10, 40)
  mustBeIn('curvature', curvature, -15, 15)
  mustBeIn('temp_c', temp_c, 0, 95)
}

/**
 * Hydrophilic-lipophilic deviation of an anionic surfactant between oil and salt water.
 *
 *   HLD = ln S − K · EACN − aT · (T − 25) + Cc
 *
 * @returns deviation [-]: below 0 oil in water, above 0 water in oil, near 0 lowest tension
 * @throws RangeError when an argument is out of range (salt from 0.01 g per 100 mL: without salt there is no logarithm)
 *
 * No alcohol in it. The form was read (hld-course); the coefficients are typical ones from memory.
 */
export function deviationOfAnionic(here: Deviation, by: DeviationCoefficients): number {
  mustHold(here, 0.01)
  return (
    Math.log(here.salt_g_per_100_ml) - by.oil * here.oil_eacn - by.temperature * (here.temp_c - 25) + here.curvature
  )
}

/**
 * Hydrophilic-lipophilic deviation of an ethoxylate; warming makes it more lipophilic.
 *
 *   HLD = b · S − K · EACN + cT · (T − 25) + Cc
 *
 * @returns deviation [-]: below 0 oil in water, above 0 water in oil
 * @throws RangeError when an argument is out of range
 *
 * No alcohol in it. The form was read (hld-course); the coefficients are typical ones from memory.
 */
export function deviationOfEthoxylate(here: Deviation, by: DeviationCoefficients): number {
  mustHold(here, 0)
  return (
    by.salt * here.salt_g_per_100_ml - by.oil * here.oil_eacn + by.temperature * (here.temp_c - 25) + here.curvature
  )
}

/**
 * Salt at which an anionic surfactant stands between oil and water (HLD = 0).
 *
 *   S = exp(K · EACN + aT · (T − 25) − Cc)
 *
 * @returns salt [g NaCl per 100 mL]; the order of oils is sounder than the figure
 * @throws RangeError when an argument is out of range
 */
export function optimumSalinity(here: Omit<Deviation, 'salt_g_per_100_ml'>, by: DeviationCoefficients): number {
  mustHold({ ...here, salt_g_per_100_ml: 1 }, 0)
  return Math.exp(by.oil * here.oil_eacn + by.temperature * (here.temp_c - 25) - here.curvature)
}
