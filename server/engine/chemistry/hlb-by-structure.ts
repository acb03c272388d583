import { mustBeIn } from '#engine/units/must-be-in.ts'

/** C2H4O */
export const OXYETHYLENE_G_PER_MOL = 44.053

/**
 * HLB of an ethoxylate from its share of oxyethylene.
 *
 *   HLB = E / 5,  E = 100 · n · 44.053 / (M + n · 44.053)
 *
 * @param hydrophobe_molar_mass  molar mass of the alcohol or acid before ethoxylation [g/mol], 100 to 2000
 * @param oxyethylene_units      oxyethylene units per molecule [-], on average, 0 to 500
 * @returns                      HLB [-], 0 to 20
 * @throws RangeError when an argument is out of range
 *
 * Only for nonionics whose one hydrophile is oxyethylene: not for polysorbates, glucosides or polyglyceryl esters.
 * A listed value wins over a computed one. Source: davies-table (secondary), Griffin 1949.
 */
export function hlbByOxyethylene(hydrophobe_molar_mass: number, oxyethylene_units: number): number {
  mustBeIn('hydrophobe_molar_mass', hydrophobe_molar_mass, 100, 2000)
  mustBeIn('oxyethylene_units', oxyethylene_units, 0, 500)
  return (
    (20 * oxyethylene_units * OXYETHYLENE_G_PER_MOL) /
    (hydrophobe_molar_mass + oxyethylene_units * OXYETHYLENE_G_PER_MOL)
  )
}

/**
 * HLB of an ester of a polyhydric alcohol from two titrations.
 *
 *   HLB = 20 · (1 − S / A)
 *
 * @param saponification_value  of the ester [mg KOH/g], 0 to acid_value
 * @param acid_value            of the fatty acid in it [mg KOH/g], above 0 to 500
 * @returns                     HLB [-], 0 to 20
 * @throws RangeError when an argument is out of range
 *
 * Runs up to 0.9 high for sorbitan oleate and 0.6 low for sorbitan tristearate: a listed value wins.
 * Source: hlb-faq (secondary), Griffin 1954.
 */
export function hlbBySaponification(saponification_value: number, acid_value: number): number {
  mustBeIn('acid_value', acid_value, 1e-3, 500)
  mustBeIn('saponification_value', saponification_value, 0, acid_value)
  return 20 * (1 - saponification_value / acid_value)
}

/** What every CH, CH2, CH3 takes away. */
export const LIPOPHILIC_GROUP_NUMBER = 0.475

/**
 * HLB out of group numbers.
 *
 *   HLB = 7 + Σ hydrophilic − 0.475 · n
 *
 * @param hydrophilic_numbers  group number of each hydrophilic group [-]
 * @param lipophilic_groups    count of CH, CH2, CH3 and =CH groups [-], 0 to 200
 * @returns                    HLB on the scale of Davies [-]; ionics lie above 20
 * @throws RangeError when there is no hydrophilic group or the count is out of range
 *
 * Works for ionics too, poorly for long oxyethylene chains. Source: davies-table (secondary), Davies 1957.
 */
export function hlbByGroups(hydrophilic_numbers: readonly number[], lipophilic_groups: number): number {
  if (hydrophilic_numbers.length === 0) throw new RangeError('hydrophilic: expected at least one group, got none')
  mustBeIn('lipophilic_groups', lipophilic_groups, 0, 200)
  return 7 + hydrophilic_numbers.reduce((sum, number) => sum + number, 0) - LIPOPHILIC_GROUP_NUMBER * lipophilic_groups
}
