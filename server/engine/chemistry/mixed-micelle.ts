import { mustBeIn } from '#engine/units/must-be-in.ts'

export interface MicelleMixture {
  /** critical micelle concentration of surfactant 1 alone [mmol/L] */
  cmc_1_mmol_per_l: number
  /** of surfactant 2 alone [mmol/L] */
  cmc_2_mmol_per_l: number
  /** of the mixture [mmol/L] */
  mixed_cmc_mmol_per_l: number
  /** mole fraction of surfactant 1 among the surfactants in solution [-], between 0 and 1 */
  mole_fraction_1: number
}

/** Critical micelle concentration [mmol/L] if the two did not care for each other: 1/C = α/C1 + (1 − α)/C2. */
export const idealCmc = ({ cmc_1_mmol_per_l, cmc_2_mmol_per_l, mole_fraction_1 }: MicelleMixture): number =>
  1 / (mole_fraction_1 / cmc_1_mmol_per_l + (1 - mole_fraction_1) / cmc_2_mmol_per_l)

function mustHold(mixture: MicelleMixture): void {
  const { cmc_1_mmol_per_l: one, cmc_2_mmol_per_l: two, mixed_cmc_mmol_per_l: mixed, mole_fraction_1 } = mixture
  mustBeIn('cmc_1_mmol_per_l', one, 1e-6, 1e4)
  mustBeIn('cmc_2_mmol_per_l', two, 1e-6, 1e4)
  mustBeIn('mole_fraction_1', mole_fraction_1, 1e-6, 1 - 1e-6)
  // Free surfactant may not exceed the concentration at which it makes micelles of its own.
  const highest = Math.min(one / mole_fraction_1, two / (1 - mole_fraction_1))
  mustBeIn('mixed_cmc_mmol_per_l', mixed, 1e-6, highest * (1 - 1e-9))
}

/** Halves the bracket until it is as narrow as a number can be. */
function rootBetween(f: (x: number) => number, low: number, high: number): number {
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2
    if (f(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * Interaction of two surfactants in mixed micelles, by regular solution theory.
 *
 *   x² · ln(α·C / (x·C1)) = (1 − x)² · ln((1 − α)·C / ((1 − x)·C2)),  β = ln(α·C / (x·C1)) / (1 − x)²
 *
 * @returns beta [-]: 0 for indifference, negative where they draw together; mole fraction of surfactant 1 in the micelle;
 *          and the CMC of ideal mixing [mmol/L]
 * @throws RangeError when an argument is out of range, or when the mixture's CMC is so high that one of the two would
 *         make micelles alone
 *
 * β is taken as constant over the mixture; a CMC of a technical surfactant has one meaningful digit (cesio-cmc), so
 * differences of β under about 0.5 mean nothing. Above 2 the model itself splits into two kinds of micelle.
 * Source: BMC2011 (read), Table 4, after Rubingh and Clint.
 */
export function micelleInteraction(mixture: MicelleMixture) {
  mustHold(mixture)
  const { cmc_1_mmol_per_l, cmc_2_mmol_per_l, mixed_cmc_mmol_per_l, mole_fraction_1 } = mixture
  const free_1 = (mole_fraction_1 * mixed_cmc_mmol_per_l) / cmc_1_mmol_per_l
  const free_2 = ((1 - mole_fraction_1) * mixed_cmc_mmol_per_l) / cmc_2_mmol_per_l
  const difference = (x: number): number => x ** 2 * Math.log(free_1 / x) - (1 - x) ** 2 * Math.log(free_2 / (1 - x))
  const micelle_fraction_1 = rootBetween(difference, 1e-12, 1 - 1e-12)
  const beta = Math.log(free_1 / micelle_fraction_1) / (1 - micelle_fraction_1) ** 2
  return { beta, micelle_fraction_1, ideal_cmc_mmol_per_l: idealCmc(mixture) }
}
