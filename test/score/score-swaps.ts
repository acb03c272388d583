/**
 * Runs the listed substitution cases through the engine and three baselines and prints how the answers score.
 * Not a timed test. `npm run score:swaps -- --verbose` prints the answers of every case.
 */
import { join } from 'node:path'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { BASELINES } from './baselines.ts'
import { engine, scoreAnswers } from './score-case.ts'
import type { CaseScore, Method } from './score-case.ts'
import { readCases } from './swap-cases.ts'
import type { SwapCase } from './swap-cases.ts'

const percent = (part: number, whole: number): string => (whole === 0 ? '–' : `${((part / whole) * 100).toFixed(1)} %`)

function row(name: string, scores: readonly CaseScore[]): string {
  const rated = scores.filter(({ noSafe }) => !noSafe)
  const noSafe = scores.filter((score) => score.noSafe)
  const hit = (k: number) => rated.filter(({ place }) => place <= k).length
  const mrr = rated.reduce((sum, { place }) => sum + 1 / place, 0) / Math.max(1, rated.length)
  return [
    name.padEnd(19),
    String(rated.length).padStart(4),
    percent(hit(1), rated.length).padStart(8),
    percent(hit(3), rated.length).padStart(8),
    mrr.toFixed(2).padStart(6),
    String(scores.flatMap(({ unsafe }) => unsafe).length).padStart(7),
    `${noSafe.filter(({ refusedAll }) => refusedAll).length}/${noSafe.length}`.padStart(9),
    String(rated.filter(({ refusedAll }) => refusedAll).length).padStart(7),
    percent(scores.filter(({ leaveOutRight }) => leaveOutRight).length, scores.length).padStart(10),
  ].join(' ')
}

const HEAD = 'group               rated   hit@1    hit@3    MRR  unsafe  no-safe  silent  leave-out'

const run = (world: World, cases: readonly SwapCase[], method: Method): CaseScore[] =>
  cases.map((one) => {
    const { answers, leaveOut } = method(world, one)
    return scoreAnswers(one, answers, leaveOut)
  })

function printUnsafe(scores: readonly CaseScore[]): void {
  for (const { id, unsafe } of scores) if (unsafe.length > 0) console.log(`  unsafe in ${id}: ${unsafe.join(', ')}`)
}

function printAnswers(cases: readonly SwapCase[], scores: readonly CaseScore[]): void {
  for (const { id, group, place, answers } of scores) {
    const missing = cases.find((one) => one.id === id)?.missing
    console.log(
      `${id} ${group} ${missing}: place ${place}\n    ${answers
        .slice(0, 6)
        .map((a) => a.join(' + '))
        .join(' | ')}`,
    )
  }
}

function report(world: World, title: string, cases: readonly SwapCase[], verbose: boolean): void {
  const scores = run(world, cases, engine(true))
  console.log(`\n${title}\n${HEAD}`)
  for (const group of [...new Set(cases.map((one) => one.group))].sort()) {
    console.log(
      row(
        group,
        scores.filter((score) => score.group === group),
      ),
    )
  }
  const untold = run(world, cases, engine(false))
  console.log(row('all', scores))
  console.log(row('all, areas untold', untold))
  for (const [name, method] of Object.entries(BASELINES)) console.log(row(name, run(world, cases, method)))
  printUnsafe([...scores, ...untold])
  if (verbose) printAnswers(cases, scores)
}

const world = buildWorld(buildKnowledge(loadRaw(join(import.meta.dirname, '../../graph-data'))))
const verbose = process.argv.includes('--verbose')
report(world, 'listed cases (tuned on)', readCases('swaps'), verbose)
report(world, 'second set, written apart from the first', readCases('swaps-own'), verbose)
