import { mustBeIn } from '#engine/units/must-be-in.ts'
import { MOST_OIL_TO_WATER, MOST_RATIO } from './two-phase-partition.ts'

export interface AcidSurroundings {
  /** pH of the water phase [-], 0 to 14 */
  ph: number
  /** acid constant [-], -2 to 16 */
  pka: number
  /** oil over water of the undissociated acid [-], 0 to 1,000,000 */
  partition_ratio: number
  /** volume of oil over volume of water [-], 0 to 1,000 */
  oil_to_water: number
  /** total over free within the water phase where micelles bind the acid [-]; 1 without micelles */
  total_to_free?: number
}

/** Ions for each undissociated molecule in water. */
export const ionsForEachAcid = (ph: number, pka: number): number => 10 ** (ph - pka)

function totalForEachAcid({ ph, pka, partition_ratio, oil_to_water, total_to_free = 1 }: AcidSurroundings): number {
  mustBeIn('ph', ph, 0, 14)
  mustBeIn('pka', pka, -2, 16)
  mustBeIn('partition_ratio', partition_ratio, 0, MOST_RATIO)
  mustBeIn('oil_to_water', oil_to_water, 0, MOST_OIL_TO_WATER)
  mustBeIn('total_to_free', total_to_free, 1, 1e6)
  return partition_ratio * oil_to_water + total_to_free + ionsForEachAcid(ph, pka)
}

/**
 * Acid that has to go in for a wanted undissociated level in the water.
 *
 *   total = undissociated · (K · phi + R + 10^(ph - pka))
 *
 * @param undissociated_percent  wanted level in the water phase [%], 0 to 100
 * @returns                      total, in oil, micelles and water together [% of the water phase]
 * @throws RangeError when an argument is out of range
 *
 * Only the undissociated acid moves into oil and micelles. Dilute solutions; acids that pair up in the oil
 * (benzoic acid in liquid paraffin) need a ratio measured at their level.
 * Source: MARTIN (memory), recomputed; for R see BEAN1972, p. 714.
 */
export function acidInEmulsion(undissociated_percent: number, surroundings: AcidSurroundings): number {
  mustBeIn('undissociated_percent', undissociated_percent, 0, 100)
  return undissociated_percent * totalForEachAcid(surroundings)
}

/**
 * The same relation the other way round: what of a total stays undissociated in the water.
 *
 * @param total_percent  total [% of the water phase]
 * @returns              undissociated acid [% of the water phase]
 * @throws RangeError when an argument is out of range
 */
export function undissociatedInEmulsion(total_percent: number, surroundings: AcidSurroundings): number {
  mustBeIn('total_percent', total_percent, 0, MOST_RATIO)
  return total_percent / totalForEachAcid(surroundings)
}
