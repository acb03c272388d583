import { mustBeIn } from '#engine/units/must-be-in.ts'

/** Of how many inocula so many still grew at this level. */
export interface DoseResponse {
  level_percent: number
  grown: number
}

/**
 * Level at which half of the inocula no longer grow, read off a straight line between the two neighbouring levels.
 *
 * @param of  inocula at each level, from 1
 * @returns   level [%], or null where no two neighbouring levels lie on both sides of one half
 * @throws RangeError when an argument is out of range
 * Source: the reading of ANDERSON1967, Tables III and IV.
 */
export function halfInhibited(responses: readonly DoseResponse[], of: number): number | null {
  mustBeIn('of', of, 1, 1e6)
  const sorted = [...responses].sort((a, b) => a.level_percent - b.level_percent)
  for (const { grown } of sorted) mustBeIn('grown', grown, 0, of)
  for (const [at, low] of sorted.entries()) {
    const high = sorted[at + 1]
    if (!high || low.grown < of / 2 || high.grown >= of / 2) continue
    const way = (low.grown - of / 2) / (low.grown - high.grown)
    return low.level_percent + way * (high.level_percent - low.level_percent)
  }
  return null
}
