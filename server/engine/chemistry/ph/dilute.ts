import type { Mixture } from './mixture.ts'

/**
 * A mixture diluted with pure water.
 *
 * @param share  product in the dilution, 0 to 1; 0.1 for one part in ten
 *
 * Water without carbon dioxide: air-saturated water draws an unbuffered product to pH 5.6 to 6.
 */
export const diluted = ({ systems, ions, temp_c }: Mixture, share: number): Mixture => ({
  temp_c,
  systems: systems.map((system) => ({ ...system, mol_per_l: system.mol_per_l * share })),
  ions: ions.map((ion) => ({ ...ion, mol_per_l: ion.mol_per_l * share })),
})
