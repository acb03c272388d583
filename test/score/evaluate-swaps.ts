import type { World } from '#engine/index.ts'
import { nameOfCriterion } from '#engine/swap/similarity.ts'
import { engine, scoreAnswers } from './score-case.ts'
import type { CaseScore, Method } from './score-case.ts'
import { interval, mean } from './statistics.ts'
import type { SwapCase } from './swap-cases.ts'

export const run = (world: World, cases: readonly SwapCase[], method: Method): CaseScore[] =>
  cases.map((one) => {
    const { answers, leaveOut } = method(world, one)
    return scoreAnswers(one, answers, leaveOut)
  })

export interface Figures {
  rated: number
  hit1: number
  hit3: number
  mrr: number
  unsafe: number
  /** cases without a safe swap, and how many of them were recognised */
  noSafe: number
  noSafeSeen: number
  /** cases with a safe swap that were answered with none */
  falseAlarms: number
  leaveOut: number
}

const rated = (scores: readonly CaseScore[]) => scores.filter(({ noSafe }) => !noSafe)
const hits = (scores: readonly CaseScore[], k: number) => rated(scores).map(({ place }) => (place <= k ? 1 : 0))
const reciprocal = (scores: readonly CaseScore[]) => rated(scores).map(({ place }) => 1 / place)

export function figuresOf(scores: readonly CaseScore[]): Figures {
  const without = scores.filter(({ noSafe }) => noSafe)
  return {
    rated: rated(scores).length,
    hit1: mean(hits(scores, 1)),
    hit3: mean(hits(scores, 3)),
    mrr: mean(reciprocal(scores)),
    unsafe: scores.flatMap(({ unsafe }) => unsafe).length,
    noSafe: without.length,
    noSafeSeen: without.filter(({ refusedAll }) => refusedAll).length,
    falseAlarms: rated(scores).filter(({ refusedAll }) => refusedAll).length,
    leaveOut: mean(scores.map(({ leaveOutRight }) => (leaveOutRight ? 1 : 0))),
  }
}

export const intervalsOf = (scores: readonly CaseScore[]) => ({
  hit1: interval(hits(scores, 1)),
  hit3: interval(hits(scores, 3)),
  mrr: interval(reciprocal(scores)),
})

/** Without one criterion: what the mean reciprocal rank changes by, with the interval of the difference over cases. */
export function ablation(world: World, cases: readonly SwapCase[], full: readonly CaseScore[]) {
  const criteria = new Set(
    [...world.knowledge.roles.values()].flatMap(({ swap }) => swap.criteria.map(nameOfCriterion)),
  )
  return [...criteria, 'usual', 'role']
    .sort()
    .map((name) => {
      const less = reciprocal(run(world, cases, engine(true, { [name]: 0 })))
      const differences = reciprocal(full).map((value, at) => (less[at] ?? 0) - value)
      return { name, change: mean(differences), ...interval(differences) }
    })
    .filter(({ low, high }) => low !== 0 || high !== 0)
    .sort((a, b) => a.change - b.change)
}

const GRID = [0.5, 0.75, 1, 1.25, 1.5].flatMap((usual) => [0.5, 1, 1.5].map((role) => ({ usual, role })))

/**
 * Each group of cases judged with the weights that are best on all other groups: how much of the score rests on having
 * set the weights on the very cases.
 */
export function leaveOneRoleOut(world: World, cases: readonly SwapCase[]): CaseScore[] {
  const byWeights = GRID.map((weights) => run(world, cases, engine(true, weights)))
  return [...new Set(cases.map(({ group }) => group))].flatMap((group) => {
    const others = byWeights.map((scores) => mean(reciprocal(scores.filter((score) => score.group !== group))))
    const best = others.indexOf(Math.max(...others))
    return byWeights[best]?.filter((score) => score.group === group) ?? []
  })
}
