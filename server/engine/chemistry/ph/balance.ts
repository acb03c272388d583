import { activitySlope } from './activity.ts'
import type { Medium, Mixture } from './mixture.ts'
import { apparentPkas, carriedAt } from './speciate.ts'
import { debyeHueckelA, pkw } from './water.ts'

/** Charges of a solution at one pH [mol/L]. */
export interface Balance {
  /** surplus of positive charge; 0 where the pH is the solution's own */
  surplus: number
  /** its fall per unit of pH, always negative: minus the buffer capacity */
  per_ph: number
  /** I = ½ Σ c z² */
  ionic_strength: number
}

const square = (charge: number): number => charge * charge

/**
 * Charges of a mixture as functions of pH, in water of a given ionic strength.
 *
 *   surplus = Σ c z (ions) + Σ c ⟨z⟩ (acid systems) + [H+] - [OH-]
 *
 * The surplus falls steadily with pH, so there is one pH at which it is 0.
 */
export function balanceIn(mixture: Mixture, { slope, pkw: ofWater }: Medium): (ph: number) => Balance {
  const steps = mixture.systems.map((system) => apparentPkas(system, slope))
  let fixed = 0
  let fixedSquare = 0
  for (const { charge, mol_per_l } of mixture.ions) {
    fixed += charge * mol_per_l
    fixedSquare += square(charge) * mol_per_l
  }
  return (ph) => {
    const hydrogen = 10 ** (slope - ph)
    const hydroxide = 10 ** (ph - ofWater + slope)
    let surplus = fixed + hydrogen - hydroxide
    let capacity = hydrogen + hydroxide
    let squares = fixedSquare + hydrogen + hydroxide
    mixture.systems.forEach((system, index) => {
      const carried = carriedAt(system, steps[index] ?? [], ph)
      surplus += system.mol_per_l * carried.charge
      capacity += system.mol_per_l * carried.variance
      squares += system.mol_per_l * carried.square
    })
    return { surplus, per_ph: -Math.LN10 * capacity, ionic_strength: squares / 2 }
  }
}

/** Water at this temperature as a function of the ionic strength. */
export function mediumAt(temp_c: number): (ionic_strength: number) => Medium {
  const a = debyeHueckelA(temp_c)
  const ofWater = pkw(temp_c)
  return (ionic_strength) => ({ slope: activitySlope(ionic_strength, a), pkw: ofWater })
}
