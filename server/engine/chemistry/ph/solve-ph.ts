import { balanceIn, mediumAt } from './balance.ts'
import { crossing, fixedPoint } from './find-root.ts'
import type { Mixture } from './mixture.ts'

export interface Solved {
  /** -log of the activity of H+ */
  ph: number
  /** [mol/L] */
  ionic_strength: number
}

/** No solution that a person can make lies outside. */
const PH_RANGE = [-2, 16] as const
const PH_WITHIN = 1e-13
const STRENGTH_WITHIN = 1e-12

/** An ionic strength that the mixture cannot pass: every form counted with its largest charge, and what water adds. */
function strongest({ systems, ions }: Mixture): number {
  const ofSystems = systems.reduce(
    (sum, { charge, pkas, mol_per_l }) => sum + mol_per_l * Math.max(charge ** 2, (charge - pkas.length) ** 2),
    0,
  )
  const ofIons = ions.reduce((sum, { charge, mol_per_l }) => sum + mol_per_l * charge ** 2, 0)
  return 1 + 2 * (ofSystems + ofIons)
}

/**
 * pH of a mixture of acids, bases and ions: the pH at which its charges add up to nothing.
 *
 * @param mixture  totals [mol/L] with constants at the temperature of the mixture (°C, 0 to 100)
 * @returns        pH as -log of the activity of H+, and the ionic strength that goes with it [mol/L]
 * @throws RangeError when the temperature is out of range or the charges only add up outside of pH -2 to 16
 *
 * Charges balance within 1e-9 mol/L. Activities by the extended Debye-Hückel law: see `activitySlope` for its range.
 * Held against published buffers in test/published. No ion pairs, no gas that leaves, nothing that falls out.
 */
export function solvePh(mixture: Mixture): Solved {
  const medium = mediumAt(mixture.temp_c)
  const [low, high] = PH_RANGE
  let ph: number | undefined
  const strengthAfter = (ionic_strength: number): number => {
    const balance = balanceIn(mixture, medium(ionic_strength))
    if (balance(low).surplus < 0 || balance(high).surplus > 0)
      throw new RangeError(`ions: expected charges that balance at pH ${low} to ${high}, got a surplus outside of it`)
    ph = crossing(
      (x) => {
        const { surplus, per_ph } = balance(x)
        return { value: surplus, slope: per_ph }
      },
      PH_RANGE,
      { within: PH_WITHIN, start: ph },
    )
    return balance(ph).ionic_strength
  }
  const ionic_strength = fixedPoint(strengthAfter, [0, strongest(mixture)], STRENGTH_WITHIN)
  strengthAfter(ionic_strength)
  return { ph: ph ?? Number.NaN, ionic_strength }
}
