import { mustBeIn } from '#engine/units/must-be-in.ts'
import { surfactantTotal } from './mixture.ts'
import type { Mixture } from './mixture.ts'
import { termsOf } from './terms.ts'

/** A fitted logistic model; `spread` is the covariance of the coefficients, in the same order. */
export interface MixtureModel {
  /** the first is `one`, whose value is always 1 */
  terms: readonly string[]
  coefficients: readonly number[]
  spread: readonly (readonly number[])[]
}

export interface SeparationRate {
  /** rate at which such mixtures separate [-], 0 to 1 */
  rate: number
  /** 95 % interval of that rate */
  min: number
  max: number
}

const NORMAL_95 = 1.96

const logistic = (x: number): number => 1 / (1 + Math.exp(-x))

/**
 * Rate at which mixtures like this one were seen to separate.
 *
 *   rate = 1 / (1 + exp(-(sum of coefficient x term)));  interval: the same at the sum plus and minus 1.96 standard errors
 *
 * @param mixture  at least one surfactant; shares above 0, in per cent
 * @throws RangeError when a share is out of range
 *
 * Holds inside the range of the measured mixtures only: two surfactants of the named kinds with one of three cationic
 * polymers and a nonionic thickener. The interval is that of the rate, not of one mixture: that one holds or not.
 * Source of the measurements: CHITRE2024; coefficients fitted by test/score/fit-mixtures.ts.
 */
export function separationRate(mixture: Mixture, { terms, coefficients, spread }: MixtureModel): SeparationRate {
  mustBeIn('surfactants', surfactantTotal(mixture), Number.MIN_VALUE, 100)
  mustBeIn('polymer_percent', mixture.polymer_percent, Number.MIN_VALUE, 100)
  mustBeIn('thickener_percent', mixture.thickener_percent, Number.MIN_VALUE, 100)
  const values = termsOf(mixture)
  const x = terms.map((term) => (term === 'one' ? 1 : (values.get(term) ?? 0)))
  const sum = x.reduce((total, value, at) => total + value * (coefficients[at] ?? 0), 0)
  const variance = x.reduce(
    (total, value, row) => total + value * x.reduce((inner, other, at) => inner + other * (spread[row]?.[at] ?? 0), 0),
    0,
  )
  const error = NORMAL_95 * Math.sqrt(Math.max(0, variance))
  return { rate: logistic(sum), min: logistic(sum - error), max: logistic(sum + error) }
}
