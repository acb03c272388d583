import { mustBeIn } from '#engine/units/must-be-in.ts'

/** A difference of less than a tenth is within what plate counts bear. */
const TELLING = 0.9

/**
 * Whether two agents together kill faster than the faster of them alone.
 *
 * @param hours_first, hours_second  time for nine of ten germs with each alone [h], above 0; at the end of a test a lower bound
 * @param hours_both                 the same with both [h], above 0
 * @throws RangeError when an argument is out of range
 * Source: the reading of JSCC1989, Table VI. It says nothing of other organisms: EDTA helps against some pseudomonads only.
 */
export function fasterTogether(hours_first: number, hours_second: number, hours_both: number): boolean {
  mustBeIn('hours_first', hours_first, Number.MIN_VALUE, 1e6)
  mustBeIn('hours_second', hours_second, Number.MIN_VALUE, 1e6)
  mustBeIn('hours_both', hours_both, Number.MIN_VALUE, 1e6)
  return hours_both < TELLING * Math.min(hours_first, hours_second)
}
