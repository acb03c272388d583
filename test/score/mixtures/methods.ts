import { fitLogistic, logistic, solve } from './logistic.ts'
import type { Method, Trial } from './trial.ts'

/** Groups of terms, each set holding the one before it: what the charge alone says first, what two kinds do together last. */
const BASE = ['polymer:']
const LOAD = ['load', 'thickener:']
export const TERM_SETS: Readonly<Record<string, readonly string[]>> = {
  polymer: BASE,
  'polymer, load': [...BASE, ...LOAD],
  'polymer, load, charge': [...BASE, ...LOAD, 'charge:'],
  'polymer, load, kind': [...BASE, ...LOAD, 'share:!'],
  'polymer, load, kind, kind by polymer': [...BASE, ...LOAD, 'share:'],
  'polymer, load, kind, kind by polymer, like': [...BASE, ...LOAD, 'share:', 'like:'],
  'polymer, load, kind, kind by polymer, like, cross': [...BASE, ...LOAD, 'share:', 'like:', 'cross:'],
}

/** A prefix names its terms; with `!` at its end those without a product. */
const belongs = (term: string, prefix: string): boolean =>
  prefix.endsWith('!') ? term.startsWith(prefix.slice(0, -1)) && !term.includes('*') : term.startsWith(prefix)

export function termsIn(set: string, trials: readonly Trial[]): string[] {
  const all = [...(trials[0]?.terms.keys() ?? [])]
  return all.filter((term) => TERM_SETS[set]?.some((prefix) => belongs(term, prefix)))
}

export const rowOf = (trial: Trial, terms: readonly string[]): number[] => [
  1,
  ...terms.map((term) => trial.terms.get(term) ?? 0),
]

export const ridgeLogistic =
  (set: string, ridge: number): Method =>
  (known) => {
    const terms = termsIn(set, known)
    const weights = fitLogistic(
      known.map((trial) => rowOf(trial, terms)),
      known.map(({ separated }) => Number(separated)),
      ridge,
    )
    return (asked) => logistic(rowOf(asked, terms).reduce((sum, value, i) => sum + value * weights[i]!, 0))
  }

const rateIn = (trials: readonly Trial[], prior: number, weight: number): number =>
  (trials.filter(({ separated }) => separated).length + prior * weight) / (trials.length + weight)

export const overallRate: Method = (known) => {
  const rate = rateIn(known, 0.5, 2)
  return () => rate
}

export const kindsOf = ({ mixture }: Trial): string =>
  mixture.surfactants
    .map(({ kind }) => kind)
    .sort()
    .join(' + ')

/** Counts by key, drawn towards what lies above it in the table by as much as `weight` mixtures. */
const table =
  (keys: readonly ((trial: Trial) => string)[], weight: number): Method =>
  (known) => {
    const above = rateIn(known, 0.5, 2)
    return (asked) =>
      keys.reduce((prior, key) => {
        const alike = known.filter((trial) => key(trial) === key(asked))
        return rateIn(alike, prior, weight)
      }, above)
  }

export const polymerTable: Method = table([({ mixture }) => mixture.polymer], 4)
export const kindPairTable: Method = table([kindsOf], 4)
export const backOffTable: Method = table(
  [({ mixture }) => mixture.polymer, kindsOf, (trial) => `${kindsOf(trial)} ${trial.mixture.polymer}`],
  4,
)

/** Numbers that a tree may cut at: no products, they are what a tree finds by itself. */
const cuttable = (trials: readonly Trial[]): string[] =>
  [...(trials[0]?.terms.keys() ?? [])].filter((term) => !/\*|like:|cross:/.test(term))

interface Stump {
  term: string
  cut: number
  below: number
  above: number
}

/** Best single cut for the present residuals, with Newton leaves. */
function bestStump(trials: readonly Trial[], terms: readonly string[], p: readonly number[]): Stump {
  let best: Stump & { gain: number } = { term: '', cut: 0, below: 0, above: 0, gain: -1 }
  for (const term of terms) {
    const values = trials.map((trial) => trial.terms.get(term) ?? 0)
    const sorted = [...new Set(values)].sort((a, b) => a - b)
    const step = Math.max(1, Math.floor(sorted.length / 12))
    for (let at = step; at < sorted.length; at += step) {
      const cut = (sorted[at]! + sorted[at - 1]!) / 2
      const g = [0, 0]
      const h = [1, 1]
      trials.forEach(({ separated }, i) => {
        const side = values[i]! < cut ? 0 : 1
        g[side]! += Number(separated) - p[i]!
        h[side]! += p[i]! * (1 - p[i]!)
      })
      const gain = g[0]! ** 2 / h[0]! + g[1]! ** 2 / h[1]!
      if (gain > best.gain) best = { term, cut, below: g[0]! / h[0]!, above: g[1]! / h[1]!, gain }
    }
  }
  return best
}

interface Tree extends Stump {
  left: Stump
  right: Stump
}

const stumpValue = (stump: Stump, trial: Trial): number =>
  (trial.terms.get(stump.term) ?? 0) < stump.cut ? stump.below : stump.above

const treeValue = (tree: Tree, trial: Trial): number =>
  stumpValue((trial.terms.get(tree.term) ?? 0) < tree.cut ? tree.left : tree.right, trial)

/** Boosted trees of two levels, small steps. */
export const boosted =
  (rounds: number, rate: number): Method =>
  (known) => {
    const terms = cuttable(known)
    const start = Math.log(rateIn(known, 0.5, 2) / (1 - rateIn(known, 0.5, 2)))
    const score = known.map(() => start)
    const trees: Tree[] = []
    for (let round = 0; round < rounds; round++) {
      const p = score.map(logistic)
      const top = bestStump(known, terms, p)
      const isLeft = known.map((trial) => (trial.terms.get(top.term) ?? 0) < top.cut)
      const part = (left: boolean) =>
        bestStump(
          known.filter((_, i) => isLeft[i] === left),
          terms,
          p.filter((_, i) => isLeft[i] === left),
        )
      const tree = { ...top, left: part(true), right: part(false) }
      trees.push(tree)
      known.forEach((trial, i) => (score[i]! += rate * treeValue(tree, trial)))
    }
    return (asked) => logistic(start + rate * trees.reduce((sum, tree) => sum + treeValue(tree, asked), 0))
  }

const MOST_STEPS = 12

/** Gaussian process for two classes (Laplace), kernel of distance over the plain terms. */
export const kernel =
  (width: number, size: number): Method =>
  (known) => {
    const terms = cuttable(known)
    const points = known.map((trial) => terms.map((term) => trial.terms.get(term) ?? 0))
    const near = (a: readonly number[], b: readonly number[]) =>
      size * (1 + Math.exp(-a.reduce((sum, value, i) => sum + (value - b[i]!) ** 2, 0) / (2 * width ** 2)))
    const k = points.map((a) => points.map((b) => near(a, b)))
    const y = known.map(({ separated }) => Number(separated))
    let f = y.map(() => 0)
    let slope: number[] = y.map(() => 0)
    for (let step = 0; step < MOST_STEPS; step++) {
      const p = f.map(logistic)
      const root = p.map((value) => Math.sqrt(value * (1 - value) + 1e-9))
      const b = p.map((value, i) => root[i]! ** 2 * f[i]! + y[i]! - value)
      const matrix = k.map((row, i) => row.map((value, j) => root[i]! * value * root[j]! + (i === j ? 1 : 0)))
      const kb = k.map((row) => row.reduce((sum, value, j) => sum + value * b[j]!, 0))
      const inner = solve(
        matrix,
        kb.map((value, i) => value * root[i]!),
      )
      slope = b.map((value, i) => value - root[i]! * inner[i]!)
      f = k.map((row) => row.reduce((sum, value, j) => sum + value * slope[j]!, 0))
    }
    return (asked) => {
      const point = terms.map((term) => asked.terms.get(term) ?? 0)
      return logistic(points.reduce((sum, other, i) => sum + near(point, other) * slope[i]!, 0))
    }
  }
