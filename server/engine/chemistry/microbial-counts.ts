import { mustBeIn } from '#engine/units/must-be-in.ts'

const MOST_CFU_PER_G = 1e12
/** One germ in a tonne: less is no count. */
const LEAST_CFU_PER_G = 1e-6
const LEAST_HOURS = 1e-3

/**
 * Decimal reduction of a count of germs.
 *
 *   reduction = log10(start / end)
 *
 * @param start_cfu_per_g            count at the start [cfu/g], one in a tonne to 10^12
 * @param end_cfu_per_g              count at the end [cfu/g], 0 only together with a detection limit
 * @param detection_limit_cfu_per_g  least count that the method sees [cfu/g], at most the start
 * @returns                          reduction [log10], negative where the germs grew; where the end lies below the
 *                                   detection limit the limit is taken and the true reduction is at least that
 * @throws RangeError when an argument is out of range, or when an end of 0 comes without a detection limit
 *
 * Source: definition; a count of 0 has no logarithm (adams-moss-p67, read).
 */
export function logReduction(
  start_cfu_per_g: number,
  end_cfu_per_g: number,
  detection_limit_cfu_per_g?: number,
): number {
  mustBeIn('start_cfu_per_g', start_cfu_per_g, LEAST_CFU_PER_G, MOST_CFU_PER_G)
  mustBeIn('end_cfu_per_g', end_cfu_per_g, 0, MOST_CFU_PER_G)
  if (detection_limit_cfu_per_g !== undefined) {
    mustBeIn('detection_limit_cfu_per_g', detection_limit_cfu_per_g, LEAST_CFU_PER_G, start_cfu_per_g)
  }
  const counted = Math.max(end_cfu_per_g, detection_limit_cfu_per_g ?? 0)
  if (counted === 0) {
    throw new RangeError('end_cfu_per_g: 0 has no logarithm; expected a count above 0 or a detection_limit_cfu_per_g')
  }
  mustBeIn('end_cfu_per_g', counted, LEAST_CFU_PER_G, MOST_CFU_PER_G)
  return Math.log10(start_cfu_per_g / counted)
}

/**
 * Time in which nine of ten germs die.
 *
 *   D = hours / log10(start / end)
 *
 * @param start_cfu_per_g  count at the start [cfu/g], above 0
 * @param end_cfu_per_g    count at the end [cfu/g], above 0 and below the start
 * @param hours            time between the two counts [h], above 0 to 10,000
 * @returns                D-value [h]
 * @throws RangeError when an argument is out of range
 *
 * Log-linear dying only: a lag at the start or a tail at the end makes two counts mislead; take several and fit a line.
 * Source: adams-moss-p67 (read), equation 4.5.
 */
export function decimalReductionTime(start_cfu_per_g: number, end_cfu_per_g: number, hours: number): number {
  mustBeIn('start_cfu_per_g', start_cfu_per_g, LEAST_CFU_PER_G, MOST_CFU_PER_G)
  mustBeIn('end_cfu_per_g', end_cfu_per_g, LEAST_CFU_PER_G, MOST_CFU_PER_G)
  mustBeIn('hours', hours, LEAST_HOURS, 10_000)
  if (end_cfu_per_g >= start_cfu_per_g) {
    throw new RangeError(`end_cfu_per_g: expected less than the start (${start_cfu_per_g}), got ${end_cfu_per_g}`)
  }
  return hours / Math.log10(start_cfu_per_g / end_cfu_per_g)
}
