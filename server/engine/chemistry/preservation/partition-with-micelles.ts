import { mustBeIn } from '#engine/units/must-be-in.ts'
import { mustBePhases } from './two-phase-partition.ts'
import type { TwoPhases } from './two-phase-partition.ts'

export interface WithMicelles extends Pick<TwoPhases, 'total_percent' | 'partition_ratio' | 'oil_to_water'> {
  /** binding constant of the pair [1/%], 0 to 1,000 */
  binding_per_percent: number
  /** surfactant in the water phase [%], 0 to 100 */
  surfactant_percent: number
}

export const MOST_BINDING = 1000

/**
 * Total over free preservative in a water phase with micelles.
 *
 *   R = 1 + k · S
 *
 * @throws RangeError when an argument is out of range
 *
 * A straight line over the range in which it was measured (0 to 5 % of polysorbate 80 for the parabens).
 * Source: BEAN1972, p. 714; PS80_LINE, Fig. 14.5.
 */
export function totalToFree(binding_per_percent: number, surfactant_percent: number): number {
  mustBeIn('binding_per_percent', binding_per_percent, 0, MOST_BINDING)
  mustBeIn('surfactant_percent', surfactant_percent, 0, 100)
  return 1 + binding_per_percent * surfactant_percent
}

/**
 * Free preservative in the water of an emulsion whose emulsifier also forms micelles.
 *
 *   free = total · (phi + 1) / (K · phi + R),   R = 1 + k · S
 *
 * @returns free level in the water phase [%], and total over free within that phase
 * @throws RangeError when an argument is out of range
 *
 * More surfactant never raises the free level. At a fixed total more oil lowers it exactly where K > R.
 * Source: BEAN1972, pp. 714-717.
 */
export function partitionWithMicelles(input: WithMicelles): { free_percent: number; total_to_free: number } {
  mustBePhases(input)
  const { total_percent, partition_ratio, oil_to_water, binding_per_percent, surfactant_percent } = input
  const total_to_free = totalToFree(binding_per_percent, surfactant_percent)
  const free_percent = (total_percent * (oil_to_water + 1)) / (partition_ratio * oil_to_water + total_to_free)
  return { free_percent, total_to_free }
}
