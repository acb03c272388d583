import { mustBeIn } from '#engine/units/must-be-in.ts'

/** The classical scale runs to 20 for nonionics; soaps and sulfates reach 40 and more. */
export const HIGHEST_HLB = 50
/** Less of a part is none [%]. */
const LEAST_SHARE_PERCENT = 1e-6

/** Mean of a figure over shares by mass; nothing is rounded on the way. `list` names the list in a fault. */
function meanByMass(list: string, parts: readonly { share_percent: number; figure: number }[], figure: string): number {
  if (parts.length === 0) throw new RangeError(`${list}: expected at least one part, got none`)
  parts.forEach((part, index) => {
    mustBeIn(`${list}/${index}/share_percent`, part.share_percent, LEAST_SHARE_PERCENT, 100)
    mustBeIn(`${list}/${index}/${figure}`, part.figure, 0, HIGHEST_HLB)
  })
  const total = parts.reduce((sum, { share_percent }) => sum + share_percent, 0)
  return parts.reduce((sum, part) => sum + part.share_percent * part.figure, 0) / total
}

/**
 * HLB of a blend of emulsifiers.
 *
 *   HLB = Σ share · HLB / Σ share
 *
 * @param emulsifiers  share of each [%], of the formula or of the blend, and its HLB [-]
 * @returns            HLB of the blend [-]
 * @throws RangeError when the list is empty, a share is not above 0 or an HLB lies outside 0 to 50
 *
 * For nonionic emulsifiers; ionic, lamellar and polymeric ones are not chosen by HLB.
 * Source: hlb-exercise-a (read), Griffin 1949.
 */
export const hlbOfBlend = (emulsifiers: readonly { share_percent: number; hlb: number }[]): number =>
  meanByMass(
    'emulsifiers',
    emulsifiers.map(({ share_percent, hlb }) => ({ share_percent, figure: hlb })),
    'hlb',
  )

/**
 * Required HLB of an oil phase, over the oil phase only.
 *
 *   required = Σ share · required / Σ share
 *
 * @param oils  share of each oil [%] and its required HLB [-]
 * @returns     required HLB of the mixture [-]
 * @throws RangeError when the list is empty, a share is not above 0 or a required HLB lies outside 0 to 50
 *
 * Required values of one oil differ by units between sources: a starting point for a row of trials.
 * Source: hlb-exercise-a (read), ocl2022-t4 (read).
 */
export const requiredHlbOfOils = (oils: readonly { share_percent: number; required_hlb: number }[]): number =>
  meanByMass(
    'oils',
    oils.map(({ share_percent, required_hlb }) => ({ share_percent, figure: required_hlb })),
    'required_hlb',
  )

/**
 * Shares of two emulsifiers that together have a wanted HLB.
 *
 *   high = (target − low) / (high − low)
 *
 * @param target_hlb  wanted HLB [-], between the two
 * @param high_hlb    HLB of the more hydrophilic one [-]
 * @param low_hlb     HLB of the more lipophilic one [-]
 * @returns           shares of the pair [%], together 100
 * @throws RangeError when the target lies outside the two, or when they do not differ
 *
 * Nonionic pairs only. Source: hlb-exercise-a (read).
 */
export function emulsifierPair(target_hlb: number, high_hlb: number, low_hlb: number) {
  mustBeIn('low_hlb', low_hlb, 0, HIGHEST_HLB)
  mustBeIn('high_hlb', high_hlb, 0, HIGHEST_HLB)
  if (!(high_hlb > low_hlb)) throw new RangeError(`high_hlb: expected more than low_hlb (${low_hlb}), got ${high_hlb}`)
  mustBeIn('target_hlb', target_hlb, low_hlb, high_hlb)
  const high_percent = (100 * (target_hlb - low_hlb)) / (high_hlb - low_hlb)
  return { high_percent, low_percent: 100 - high_percent }
}
