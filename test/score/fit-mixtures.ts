/**
 * Fits the rate at which surfactant mixtures separate and writes graph-data/tables/mixture-model.tsv (coefficients) and
 * mixture-spread.tsv (their covariance over pairs of surfactants drawn anew). `node --import tsx test/score/fit-mixtures.ts`
 */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { CHOSEN } from './mixtures/chosen.ts'
import { fitChosen, spreadOf } from './mixtures/fit.ts'
import { readTrials } from './mixtures/trial.ts'

const DRAWS = 400
const trials = readTrials()
const { terms, coefficients } = fitChosen(trials)
const spread = spreadOf(trials, DRAWS)
const locator = `logistic regression (${CHOSEN.set}; ridge ${CHOSEN.ridge}) on ${trials.length} mixtures of table surfactant-mixtures, by test/score/fit-mixtures.ts`

const write = (name: string, rows: readonly (readonly (string | number)[])[]): void =>
  writeFileSync(
    join(import.meta.dirname, `../../graph-data/tables/${name}.tsv`),
    rows.map((row) => row.join('\t')).join('\n') + '\n',
  )

write('mixture-model', [
  ['term', 'coefficient', 'standard_error', 'kind', 'source_id', 'locator', 'access'],
  ...terms.map((term, i) => [
    term,
    coefficients[i]!.toFixed(4),
    Math.sqrt(spread[i]![i]!).toFixed(4),
    ...['derived', 'CHITRE2024', locator, 'read'],
  ]),
])
write('mixture-spread', [['term', ...terms], ...terms.map((term, i) => [term, ...spread[i]!.map((v) => v.toFixed(5))])])
console.log(terms.map((term, i) => `${term.padEnd(40)} ${coefficients[i]!.toFixed(2)}`).join('\n'))
