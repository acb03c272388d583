import type { AcidSystem } from './mixture.ts'

/** What a mole of one acid system carries at one pH. */
export interface Carried {
  /** mean charge [-] */
  charge: number
  /** spread of the charge, ⟨z²⟩ - ⟨z⟩² [-]: how much it buffers */
  variance: number
  /** mean square of the charge [-]: what it gives to the ionic strength, twice */
  square: number
}

/** -log K of the steps as concentrations obey them, hydrogen ion by activity. */
export function apparentPkas({ charge, pkas, apparent }: AcidSystem, slope: number): number[] {
  if (apparent) return [...pkas]
  // log γ(acid) - log γ(base) = slope · (z_base² - z_acid²)
  return pkas.map((pka, step) => pka + slope * ((charge - step) ** 2 - (charge - step - 1) ** 2))
}

/**
 * Mean charge of an acid system.
 *
 *   c(n protons lost) ∝ Π 10^(pH - pKa_i), i up to n
 *
 * @param system  charge of the full form and constants
 * @param steps   constants as concentrations obey them (`apparentPkas`)
 * @param ph      -log of the activity of H+
 *
 * Exact. The largest term is divided out, so that no pH overflows.
 */
export function carriedAt(system: AcidSystem, steps: readonly number[], ph: number): Carried {
  let log = 0
  let largest = 0
  for (const pka of steps) {
    log += ph - pka
    if (log > largest) largest = log
  }
  let charge = system.charge
  let share = powerOfTen(-largest)
  let sum = share
  let first = share * charge
  let second = share * charge * charge
  log = -largest
  for (const pka of steps) {
    charge -= 1
    log += ph - pka
    share = powerOfTen(log)
    sum += share
    first += share * charge
    second += share * charge * charge
  }
  const mean = first / sum
  const square = second / sum
  return { charge: mean, square, variance: Math.max(0, square - mean * mean) }
}

/** Twice as fast as **, and this is the innermost loop. */
const powerOfTen = (log: number): number => Math.exp(log * Math.LN10)

/** Shares of all forms, most protons first; they add up to 1. */
export function sharesAt(steps: readonly number[], ph: number): number[] {
  const logs = steps.reduce<number[]>((all, pka) => [...all, (all.at(-1) ?? 0) + ph - pka], [0])
  const largest = Math.max(...logs)
  const terms = logs.map((log) => 10 ** (log - largest))
  const sum = terms.reduce((total, term) => total + term, 0)
  return terms.map((term) => term / sum)
}
