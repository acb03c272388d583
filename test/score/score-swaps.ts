/**
 * Runs the substitution cases through the engine and three baselines and prints how the answers score, with intervals.
 * Not a timed test. `npm run score:swaps -- --verbose` prints the answers of every case, `--write` puts the table into
 * DEVELOPERS.md, `--quick` leaves out ablation and leave-one-role-out.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { auditRefusals } from './audit-refusals.ts'
import { BASELINES } from './baselines.ts'
import { ablation, figuresOf, intervalsOf, leaveOneRoleOut, run } from './evaluate-swaps.ts'
import { engine } from './score-case.ts'
import type { CaseScore } from './score-case.ts'
import { halves } from './statistics.ts'
import { readCases } from './swap-cases.ts'
import type { SwapCase } from './swap-cases.ts'

const percent = (value: number): string => (Number.isNaN(value) ? '–' : `${(value * 100).toFixed(1)} %`)
const span = ({ low, high }: { low: number; high: number }, scale = 100): string =>
  `${(low * scale).toFixed(scale === 1 ? 2 : 0)}–${(high * scale).toFixed(scale === 1 ? 2 : 0)}`

const HEAD = [
  'cases',
  'rated',
  'hit@1',
  '95 %',
  'hit@3',
  '95 %',
  'MRR',
  '95 %',
  'unsafe',
  'no-safe',
  'silent',
  'leave-out',
]

function row(name: string, scores: readonly CaseScore[]): string[] {
  const { rated, hit1, hit3, mrr, unsafe, noSafe, noSafeSeen, falseAlarms, leaveOut } = figuresOf(scores)
  const spans = intervalsOf(scores)
  return [
    ...[name, String(rated), percent(hit1), span(spans.hit1), percent(hit3), span(spans.hit3)],
    ...[mrr.toFixed(2), span(spans.mrr, 1), String(unsafe), `${noSafeSeen}/${noSafe}`, String(falseAlarms)],
    percent(leaveOut),
  ]
}

function print(rows: readonly string[][]): void {
  const widths = HEAD.map((_, at) => Math.max(...rows.map((cells) => cells[at]?.length ?? 0)))
  for (const cells of rows) console.log(cells.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join('  '))
}

const asMarkdown = (rows: readonly string[][]): string =>
  rows
    .map((cells, at) => `| ${cells.join(' | ')} |${at === 0 ? `\n|${cells.map(() => ' --- ').join('|')}|` : ''}`)
    .join('\n')

const world = buildWorld(buildKnowledge(loadRaw(join(import.meta.dirname, '../../graph-data'))))
const has = (flag: string): boolean => process.argv.includes(flag)
const listed = readCases('swaps')
const own = readCases('swaps-own')
const SPLIT_SEED = 7

function groupsOf(cases: readonly SwapCase[], scores: readonly CaseScore[]): string[][] {
  return [...new Set(cases.map(({ group }) => group))].sort().map((group) =>
    row(
      `  ${group}`,
      scores.filter((score) => score.group === group),
    ),
  )
}

function printAnswers(scores: readonly CaseScore[]): void {
  for (const { id, group, place, answers, unsafe } of scores) {
    const shown = answers.slice(0, 6).map((answer) => answer.join(' + '))
    console.log(
      `${id} ${group}: place ${place}${unsafe.length > 0 ? ` UNSAFE ${unsafe.join()}` : ''}\n    ${shown.join(' | ')}`,
    )
  }
}

const onListed = run(world, listed, engine(true))
const onOwn = run(world, own, engine(true))
const [tuning, check] = halves(listed, SPLIT_SEED).map((half) => new Set(half.map(({ id }) => id)))
const half = (ids: ReadonlySet<string> | undefined) => onListed.filter(({ id }) => ids?.has(id))
const table = [
  HEAD,
  row('listed', onListed),
  row('listed, tuning half', half(tuning)),
  row('listed, check half', half(check)),
  row('listed, areas untold', run(world, listed, engine(false))),
  ...(has('--quick') ? [] : [row('listed, weights of the other groups', leaveOneRoleOut(world, listed))]),
  ...Object.entries(BASELINES).map(([name, method]) => row(`baseline: ${name}`, run(world, listed, method))),
  row('second set, written apart', onOwn),
  row('second set, areas untold', run(world, own, engine(false))),
  ...Object.entries(BASELINES).map(([name, method]) => row(`second set, baseline: ${name}`, run(world, own, method))),
]
print([HEAD, ...groupsOf(listed, onListed)])
console.log()
print(table)
for (const { id, unsafe } of [...onListed, ...onOwn])
  if (unsafe.length > 0) console.log(`unsafe in ${id}: ${unsafe.join(', ')}`)
const audit = auditRefusals(world, [...listed, ...own])
console.log(
  `\nconflicts ${audit.conflicts}, not minimal ${audit.notMinimal}; changes with which a refused one would hold ${audit.changes}, failing ${audit.changesThatFail}`,
)
if (!has('--quick')) {
  console.log(
    '\nwithout one criterion: change of the MRR on both sets, with its interval (only those that move anything)',
  )
  for (const { name, change, low, high } of ablation(world, [...listed, ...own], [...onListed, ...onOwn]))
    console.log(`  ${name.padEnd(20)} ${change.toFixed(3).padStart(7)}  ${low.toFixed(3)} to ${high.toFixed(3)}`)
}
if (has('--verbose')) printAnswers([...onListed, ...onOwn])
if (has('--write')) {
  const path = join(import.meta.dirname, '../../DEVELOPERS.md')
  const block = `<!-- score -->\n${asMarkdown(table)}\n<!-- /score -->`
  const text = readFileSync(path, 'utf8')
  writeFileSync(
    path,
    text.replace(/<!-- score -->(?:[\s\S]*<!-- \/score -->)?/, () => block),
  )
}
