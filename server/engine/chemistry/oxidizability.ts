/** Relative speed at which the esters take up oxygen [-], oleic acid = 1. */
export const OXIDATION_WEIGHTS: Readonly<Record<string, number>> = { 'C18:1': 1, 'C18:2': 10.3, 'C18:3': 21.6 }

/** More of other unsaturated acids than this [%] and the relation no longer describes the oil. */
const LEFT_OUT_AT_MOST_PERCENT = 10

/** Unsaturated acids of a scaled profile for which the relation has no weight, with their shares. */
export const withoutWeight = (profile: Readonly<Record<string, number>>): [string, number][] =>
  Object.entries(profile).filter(([acid, share]) => share > 0 && !/:0$/.test(acid) && !(acid in OXIDATION_WEIGHTS))

/**
 * Calculated oxidizability of an oil out of its fatty acids.
 *
 *   (1 · C18:1 + 10.3 · C18:2 + 21.6 · C18:3) / 100
 *
 * @param profile   shares of the acids [%], scaled to 100
 * @param argument  what a fault is to name
 * @returns         index [-]; about 1 for a high-oleic oil, 7 for a linoleic one, 14 for flaxseed
 * @throws RangeError when more than 10 % of the acids are unsaturated and not among the three
 *
 * Orders oils by their acids alone: tocopherols, metals, light and the oil's history can turn the order round.
 * Source: fatemi-hammond-1980-mem (memory). By oxygen uptake of pure esters 1 : 41 : 98 is quoted (refaat-2009, read).
 */
export function oxidizability(profile: Readonly<Record<string, number>>, argument = 'fatty_acids'): number {
  const others = withoutWeight(profile)
  const left_out_percent = others.reduce((sum, [, share]) => sum + share, 0)
  if (left_out_percent > LEFT_OUT_AT_MOST_PERCENT) {
    const named = others.map(([acid]) => acid).join(', ')
    throw new RangeError(
      `${argument}: expected at most ${LEFT_OUT_AT_MOST_PERCENT} % unsaturated acids without a published weight (${named}), got ${left_out_percent.toFixed(1)} %`,
    )
  }
  return Object.entries(OXIDATION_WEIGHTS).reduce(
    (sum, [acid, weight]) => sum + (weight * (profile[acid] ?? 0)) / 100,
    0,
  )
}
