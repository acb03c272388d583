/**
 * How well the rate at which surfactant mixtures separate is foretold for pairs of surfactants that were not learnt from.
 * Not a timed test. `npm run score:mixtures`; `-- --all` adds the slower rivals.
 */
import { acrossPairs, acrossSurfactants, choosing } from './mixtures/cross-validate.ts'
import { auc, brier, interval, precision, reliability } from './mixtures/metrics.ts'
import type { Foretold } from './mixtures/metrics.ts'
import {
  backOffTable,
  boosted,
  kernel,
  kindPairTable,
  kindsOf,
  overallRate,
  polymerTable,
  ridgeLogistic,
  TERM_SETS,
} from './mixtures/methods.ts'
import { CALLED_FROM, CHOSEN } from './mixtures/chosen.ts'
import { readTrials } from './mixtures/trial.ts'
import type { Method, Trial } from './mixtures/trial.ts'

const trials = readTrials()
const two = (value: number): string => value.toFixed(2)
const three = (value: number): string => value.toFixed(3)
const within = ([min, max]: readonly [number, number]): string => `(${two(min)} to ${two(max)})`

function line(name: string, rows: readonly Foretold[], other: readonly Foretold[]): string {
  const called = (of: readonly Foretold[]) => precision(of, CALLED_FROM)
  return [
    name.padEnd(52),
    `${three(auc(rows))} ${within(interval(rows, auc))}`.padStart(21),
    three(brier(rows)).padStart(7),
    `${two(called(rows))} ${within(interval(rows, called))}`.padStart(20),
    String(rows.filter(({ rate }) => rate >= CALLED_FROM).length).padStart(5),
    three(auc(other)).padStart(8),
    two(called(other)).padStart(6),
  ].join(' ')
}

const tables: [string, Method][] = [
  ['overall rate', overallRate],
  ['table by polymer', polymerTable],
  ['table by pair of kinds', kindPairTable],
  ['table by polymer, pair, both (backing off)', backOffTable],
]
const RIDGES = [3, 1, 0.3]
const sets = Object.keys(TERM_SETS)
const rivals: [string, Method][] = sets.map((set) => [`logistic: ${set}`, ridgeLogistic(set, CHOSEN.ridge)])
const slow: [string, Method][] = [
  ['boosted trees of two levels', boosted(120, 0.08)],
  ['Gaussian process', kernel(1, 4)],
]
const nested = choosing(sets.flatMap((set) => RIDGES.map((ridge) => ridgeLogistic(set, ridge))))

console.log(`${trials.length} mixtures, ${new Set(trials.map(({ pair }) => pair)).size} pairs of surfactants`)

/** Plain shares that separated, with their 95 % interval over pairs drawn anew. */
function printRates(title: string, key: (trial: Trial) => string): void {
  console.log(`\n${title.padEnd(32)}    n  separated`)
  const rate = (rows: readonly Foretold[]) => rows.filter(({ separated }) => separated).length / rows.length
  for (const name of [...new Set(trials.map(key))].sort()) {
    const rows = trials.filter((trial) => key(trial) === name).map((trial) => ({ ...trial, rate: 0 }))
    const pairs = new Set(rows.map(({ pair }) => pair)).size
    const spread = pairs > 1 ? within(interval(rows, rate)) : '(one pair)'
    console.log(`${name.padEnd(32)} ${String(rows.length).padStart(4)}  ${two(rate(rows))} ${spread}`)
  }
}
printRates('all', () => 'all')
printRates('by polymer', ({ mixture }) => mixture.polymer)
printRates('by kinds of surfactant', kindsOf)

console.log(`\n"will separate" is said from a rate of ${CALLED_FROM}; intervals: 95 %, pairs drawn anew\n`)
console.log(
  `${'by ten folds of pairs'.padEnd(52)} ${'AUC'.padStart(21)} ${'Brier'.padStart(7)} ${'precision'.padStart(20)} ${'n'.padStart(5)} | without one surfactant: AUC, precision`,
)
const all = process.argv.includes('--all')
for (const [name, method] of [...tables, ...rivals, ...(all ? slow : [])])
  console.log(line(name, acrossPairs(method, trials), acrossSurfactants(method, trials)))
const honest = acrossPairs(nested, trials)
console.log(line('logistic, set and ridge chosen inside each fold', honest, acrossSurfactants(nested, trials)))

console.log('\nreliability of the last line\nforetold      n  mean  seen')
for (const { from, to, n, foretold, seen } of reliability(honest))
  console.log(`${from.toFixed(1)} to ${to.toFixed(1)} ${String(n).padStart(4)}  ${two(foretold)}  ${two(seen)}`)
