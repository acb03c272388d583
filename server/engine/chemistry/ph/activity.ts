/** Beyond this ionic strength [mol/L] the law below is a guide only. */
export const IONIC_STRENGTH_MAX = 0.5

/**
 * -log of the activity coefficient of a single charge (extended Debye-Hückel law, one ion size for all).
 *
 *   -log γ(z) = z² · A √I / (1 + 1.5 √I)
 *
 * @param ionic_strength  I = ½ Σ c z² [mol/L], not negative
 * @param a               factor A at this temperature [(L/mol)^½]
 * @returns               for z = 1 [-]; z² times this for z charges, 0 for what carries none
 *
 * Published buffers up to I = 0.5 mol/L are met within 0.025 in pH on average and 0.10 at most (test/published); a guide
 * above.
 */
export function activitySlope(ionic_strength: number, a: number): number {
  const root = Math.sqrt(ionic_strength)
  return (a * root) / (1 + 1.5 * root)
}
