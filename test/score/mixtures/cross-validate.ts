import { chance, logLoss } from './metrics.ts'
import type { Foretold } from './metrics.ts'
import type { Method, Trial } from './trial.ts'

const foretell = (method: Method, known: readonly Trial[], asked: readonly Trial[]): Foretold[] => {
  const rate = method(known)
  return asked.map((trial) => ({ pair: trial.pair, rate: rate(trial), separated: trial.separated }))
}

/** Pairs of surfactants dealt out to folds by chance. */
export function foldsByPair(trials: readonly Trial[], folds: number, seed: number): Trial[][] {
  const random = chance(seed)
  const pairs = [...new Set(trials.map(({ pair }) => pair))]
    .map((pair) => ({ pair, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ pair }) => pair)
  return Array.from({ length: folds }, (_, fold) =>
    trials.filter(({ pair }) => pairs.indexOf(pair) % folds === fold),
  ).filter((fold) => fold.length > 0)
}

/** Every mixture foretold by what was learnt from mixtures of other pairs. */
export function acrossPairs(method: Method, trials: readonly Trial[], folds = 10, seed = 1): Foretold[] {
  return foldsByPair(trials, folds, seed).flatMap((fold) =>
    foretell(
      method,
      trials.filter((trial) => !fold.includes(trial)),
      fold,
    ),
  )
}

/** Harder: every mixture foretold without any mixture that holds one of its surfactants; the mean of leaving out one or the other. */
export function acrossSurfactants(method: Method, trials: readonly Trial[]): Foretold[] {
  const sums = new Map<Trial, number[]>()
  for (const name of new Set(trials.flatMap(({ mixture }) => mixture.names))) {
    const asked = trials.filter(({ mixture }) => mixture.names.includes(name))
    const rate = method(trials.filter(({ mixture }) => !mixture.names.includes(name)))
    for (const trial of asked) sums.set(trial, [...(sums.get(trial) ?? []), rate(trial)])
  }
  return [...sums].map(([{ pair, separated }, rates]) => ({
    pair,
    separated,
    rate: rates.reduce((sum, rate) => sum + rate, 0) / rates.length,
  }))
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

/** The method with the least surprise on pairs that it did not see, over several deals of the folds. */
export function bestOf(candidates: readonly Method[], trials: readonly Trial[], deals = [11, 12, 13]): Method {
  const losses = candidates.map((method) => mean(deals.map((seed) => logLoss(acrossPairs(method, trials, 10, seed)))))
  return candidates[losses.indexOf(Math.min(...losses))]!
}

/** A method that chooses among candidates by itself, from what it is given to learn from: for nested validation. */
export const choosing =
  (candidates: readonly Method[]): Method =>
  (known) =>
    bestOf(candidates, known)(known)
