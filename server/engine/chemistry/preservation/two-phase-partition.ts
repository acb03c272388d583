import { mustBeIn } from '#engine/units/must-be-in.ts'

export interface TwoPhases {
  /** preservative in the whole emulsion [%], above 0 to 100 */
  total_percent: number
  /** oil over water at equilibrium [-], 0 to 1,000,000 */
  partition_ratio: number
  /** volume of oil over volume of water [-], 0 to 1,000 */
  oil_to_water: number
  /** solubility in water [%]; without it the water takes up any amount */
  water_solubility_percent?: number
}

export const MOST_RATIO = 1e6
export const MOST_OIL_TO_WATER = 1000

/** @throws RangeError when an argument that the partition relations share is out of range */
export function mustBePhases({ total_percent, partition_ratio, oil_to_water }: TwoPhases): void {
  mustBeIn('total_percent', total_percent, 0, 100)
  mustBeIn('partition_ratio', partition_ratio, 0, MOST_RATIO)
  mustBeIn('oil_to_water', oil_to_water, 0, MOST_OIL_TO_WATER)
}

/**
 * Where a preservative goes between oil and water.
 *
 *   water = total · (phi + 1) / (K · phi + 1),   oil = K · water
 *
 * with K = partition_ratio and phi = oil_to_water. The water phase cannot pass the solubility; where it would, oil and
 * water are both saturated and the rest stays undissolved.
 *
 * @returns  level in the water phase and in the oil phase [% of that phase]
 * @throws RangeError when an argument is out of range
 *
 * Holds for a substance that neither ionises nor associates in the oil (benzoic acid pairs up in liquid paraffin), and
 * takes no micelles into account. At a fixed total more oil lowers the level in water where K > 1, raises it where
 * K < 1 and leaves it where K = 1, whatever phi is.
 * Source: BEAN1972, p. 715, equation above Table VIII; BEAN1965, Table II.
 */
export function twoPhasePartition(phases: TwoPhases): { water_percent: number; oil_percent: number } {
  mustBePhases(phases)
  const { total_percent, partition_ratio, oil_to_water, water_solubility_percent } = phases
  if (water_solubility_percent !== undefined) {
    mustBeIn('water_solubility_percent', water_solubility_percent, Number.MIN_VALUE, 100)
  }
  const dissolved_percent = (total_percent * (oil_to_water + 1)) / (partition_ratio * oil_to_water + 1)
  const water_percent = Math.min(dissolved_percent, water_solubility_percent ?? Infinity)
  return { water_percent, oil_percent: partition_ratio * water_percent }
}
