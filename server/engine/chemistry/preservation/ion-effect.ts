import { mustBeIn } from '#engine/units/must-be-in.ts'
import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'

export interface Inhibition {
  /** level of the undissociated acid [%] */
  acid_percent: number
  /** level of its ion [%] */
  ion_percent: number
  /** level of undissociated acid that stops growth by itself [%], above 0 */
  acid_alone_percent: number
  /** level of the ion that stops growth by itself [%], above 0 */
  ion_alone_percent: number
}

/**
 * How far acid and ion together are from stopping growth: at 1 growth stops.
 *
 *   acid / acid_alone + ion / ion_alone
 *
 * @throws RangeError when an argument is out of range
 * Source: EKLUND1983, abstract (sorbic acid, six organisms).
 */
export function inhibition({ acid_percent, ion_percent, acid_alone_percent, ion_alone_percent }: Inhibition): number {
  mustBeIn('acid_percent', acid_percent, 0, 100)
  mustBeIn('ion_percent', ion_percent, 0, 100)
  mustBeIn('acid_alone_percent', acid_alone_percent, Number.MIN_VALUE, 1e6)
  mustBeIn('ion_alone_percent', ion_alone_percent, Number.MIN_VALUE, 1e6)
  return acid_percent / acid_alone_percent + ion_percent / ion_alone_percent
}

/**
 * Effect of a weak acid at a pH, in shares of the effect that all of it had if none were dissociated.
 *
 *   effect = share + (1 - share) / acid_over_ion
 *
 * @param acid_over_ion  how many times stronger the undissociated acid is than its ion [-], from 1; Infinity where the
 *                       ion does nothing
 * @throws RangeError when an argument is out of range
 * Source: EKLUND1983, abstract: 10 to 600 times for sorbic acid.
 */
export function acidEffect(ph: number, pka: number, acid_over_ion: number): number {
  mustBeIn('acid_over_ion', acid_over_ion, 1, Infinity)
  const share = undissociatedShare(ph, pka)
  return share + (1 - share) / acid_over_ion
}

/** Part of that effect that comes from the ion, 0 to 1. @throws RangeError when an argument is out of range */
export function ionPartOfEffect(ph: number, pka: number, acid_over_ion: number): number {
  const effect = acidEffect(ph, pka, acid_over_ion)
  return effect === 0 ? 0 : 1 - undissociatedShare(ph, pka) / effect
}

interface InhibitoryTotal {
  ph: number
  total_percent: number
}

/**
 * Levels at which acid and ion each stop growth, from the inhibitory totals at two pH values.
 *
 * Two equations `acid / acid_alone + ion / ion_alone = 1` in two unknowns.
 * @returns null where the two points do not allow an effect of the ion (the total rises faster than the acid falls)
 * @throws RangeError when an argument is out of range
 * Source: the relation of EKLUND1983; used here on ANDERSON1967, Table IV.
 */
export function levelsAlone(
  first: InhibitoryTotal,
  second: InhibitoryTotal,
  pka: number,
): { acid_alone_percent: number; ion_alone_percent: number } | null {
  const [a, b] = [first, second].map(({ ph, total_percent }) => {
    mustBeIn('total_percent', total_percent, Number.MIN_VALUE, 100)
    const share = undissociatedShare(ph, pka)
    return { acid: total_percent * share, ion: total_percent * (1 - share) }
  }) as [{ acid: number; ion: number }, { acid: number; ion: number }]
  const determinant = a.acid * b.ion - b.acid * a.ion
  const acidWeight = (b.ion - a.ion) / determinant
  const ionWeight = (a.acid - b.acid) / determinant
  if (!(acidWeight > 0 && ionWeight > 0)) return null
  return { acid_alone_percent: 1 / acidWeight, ion_alone_percent: 1 / ionWeight }
}
