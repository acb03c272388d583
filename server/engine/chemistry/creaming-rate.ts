import { mustBeIn } from '#engine/units/must-be-in.ts'

export const GRAVITY_M_PER_S2 = 9.80665
const SECONDS_PER_DAY = 86_400

/**
 * Speed at which a droplet rises (or, with a negative gap, sinks), after Stokes.
 *
 *   v = d² · Δρ · g / (18 · η)
 *
 * @param droplet_um             diameter of the droplet [µm], 0.001 to 1000
 * @param density_gap_kg_per_m3  density of the outer phase less that of the droplet [kg/m³], −2000 to 2000
 * @param viscosity_mpa_s        viscosity of the outer phase at rest [mPa·s], 0.1 to 10 million
 * @returns                      speed [mm per day], positive upwards
 * @throws RangeError when an argument is out of range
 *
 * For single round droplets in a Newtonian liquid: under about 1 % by volume, above about 1 µm (below, Brownian motion
 * stirs them back), slow flow (Reynolds number under 0.1). A gum with a yield value can stop creaming altogether.
 * Source: stokes-emulsion-page (read), equation 2-9.
 */
export function creamingRate(droplet_um: number, density_gap_kg_per_m3: number, viscosity_mpa_s: number): number {
  mustBeIn('droplet_um', droplet_um, 1e-3, 1000)
  mustBeIn('density_gap_kg_per_m3', density_gap_kg_per_m3, -2000, 2000)
  mustBeIn('viscosity_mpa_s', viscosity_mpa_s, 0.1, 1e7)
  const m_per_s = ((droplet_um * 1e-6) ** 2 * density_gap_kg_per_m3 * GRAVITY_M_PER_S2) / (18 * viscosity_mpa_s * 1e-3)
  return m_per_s * 1000 * SECONDS_PER_DAY
}

/** Reynolds number of that droplet in an outer phase of about the density of water; the relation holds far below 1. */
export function reynoldsOfDroplet(droplet_um: number, rate_mm_per_day: number, viscosity_mpa_s: number): number {
  const m_per_s = Math.abs(rate_mm_per_day) / 1000 / SECONDS_PER_DAY
  return (1000 * m_per_s * droplet_um * 1e-6) / (viscosity_mpa_s * 1e-3)
}
