import { CHOSEN } from './chosen.ts'
import { fitLogistic } from './logistic.ts'
import { chance, resampled } from './metrics.ts'
import { rowOf, termsIn } from './methods.ts'
import type { Trial } from './trial.ts'

export interface Fitted {
  terms: string[]
  coefficients: number[]
}

/** Coefficients of the chosen model; `one` is the constant. */
export function fitChosen(trials: readonly Trial[]): Fitted {
  const terms = termsIn(CHOSEN.set, trials)
  const coefficients = fitLogistic(
    trials.map((trial) => rowOf(trial, terms)),
    trials.map(({ separated }) => Number(separated)),
    CHOSEN.ridge,
  )
  return { terms: ['one', ...terms], coefficients }
}

/** Covariance of the coefficients when whole pairs of surfactants are drawn anew, with return. */
export function spreadOf(trials: readonly Trial[], draws: number): number[][] {
  const random = chance(3)
  const fits = Array.from({ length: draws }, () => fitChosen(resampled(trials, random)).coefficients)
  const size = fits[0]!.length
  const means = Array.from({ length: size }, (_, i) => fits.reduce((sum, fit) => sum + fit[i]!, 0) / draws)
  return means.map((a, i) =>
    means.map((b, j) => fits.reduce((sum, fit) => sum + (fit[i]! - a) * (fit[j]! - b), 0) / (draws - 1)),
  )
}
