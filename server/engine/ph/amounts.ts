import type { Addition } from './additive.ts'

/** Grams to weigh and moles in the water phase, either way. */
export interface Amounts {
  grams(mol_per_l: number): number
  moles(grams: number): number
}

/**
 * @param addition     molar mass [g/mol] and strength [%] of what is weighed
 * @param batch_g      mass of the batch
 * @param water_share  share of the batch in which it dissolves, 0 to 1; 1 kg of it counts as 1 L
 */
export function amountsOf(addition: Addition, batch_g: number, water_share: number): Amounts {
  const grams_per_mol_per_l = (((batch_g * water_share) / 1000) * addition.molar_mass * 100) / addition.strength_percent
  return {
    grams: (mol_per_l) => mol_per_l * grams_per_mol_per_l,
    moles: (grams) => grams / grams_per_mol_per_l,
  }
}

const DIGITS = 4
/** To four digits: more is not weighed and not known. */
export const said = (grams: number): number => Number(grams.toPrecision(DIGITS))

/** Down to three digits, so that a step never adds more than was worked out. */
export function stepDown(grams: number): number {
  if (grams <= 0) return 0
  const unit = 10 ** (Math.floor(Math.log10(grams)) - 2)
  return Number((Math.floor(grams / unit + 1e-9) * unit).toPrecision(3))
}
