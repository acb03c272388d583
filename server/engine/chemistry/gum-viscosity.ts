import { mustBeIn } from '#engine/units/must-be-in.ts'

/** Viscosity of water at 25 °C [mPa·s]. */
const WATER_MPA_S = 0.89
/** Above this specific viscosity the coils overlap and the steep law holds [-]. */
const CONCENTRATED_FROM = 10
/** Slope of the specific viscosity over the concentration when the coils overlap [-]. */
export const CONCENTRATED_SLOPE = 3.3
/** How far the share may be moved away from the measured point [-]. */
const FARTHEST_FACTOR = 2

/**
 * Viscosity of a gum solution near a measured point.
 *
 *   η/η0 − 1 grows as c^3.3
 *
 * @param known_percent   share at which the viscosity was measured [%]
 * @param known_mpa_s     viscosity there, low shear [mPa·s]
 * @param wanted_percent  share asked for [%], half to twice the known one
 * @returns               viscosity [mPa·s]
 * @throws RangeError when an argument is out of range, the shares lie further apart, or the solution is so thin at either
 *         share that the coils do not overlap (specific viscosity below 10)
 *
 * Random coils at rest (cellulose gum, hydroxyethylcellulose, alginate without calcium), same grade, salt and temperature. Guar,
 * locust bean gum and hyaluronate rise more steeply, xanthan less. Source: morris-1981 (read, abstract).
 */
export function gumViscosity(known_percent: number, known_mpa_s: number, wanted_percent: number): number {
  mustBeIn('known_percent', known_percent, 0.01, 20)
  mustBeIn('known_mpa_s', known_mpa_s, WATER_MPA_S * (1 + CONCENTRATED_FROM), 1e6)
  mustBeIn('wanted_percent', wanted_percent, known_percent / FARTHEST_FACTOR, known_percent * FARTHEST_FACTOR)
  const specific = (known_mpa_s / WATER_MPA_S - 1) * (wanted_percent / known_percent) ** CONCENTRATED_SLOPE
  if (specific < CONCENTRATED_FROM) {
    throw new RangeError(
      `wanted_percent: expected a solution in which the coils overlap (specific viscosity from ${CONCENTRATED_FROM}), got ${specific.toPrecision(2)}`,
    )
  }
  return WATER_MPA_S * (1 + specific)
}
