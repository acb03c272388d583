/**
 * Every row of the compiled law against the engine: a formula just inside and one just outside, both judged by
 * checkFormula; or told as a condition; or on the list of what a formula cannot be judged by. Then the uses that rows ban,
 * and the days from which rows bind. `npm run score:law`.
 */
import { join } from 'node:path'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { bannedUses, faultOfUse } from './law-banned-uses.ts'
import { faultOfDay, judgeRow } from './law-judged.ts'
import type { Outcome } from './law-judged.ts'
import { NOT_CHECKABLE } from './law-not-checkable.ts'
import { lawRows } from './law-rows.ts'

const WORDS: Record<Outcome, string> = {
  figure: 'enforced by figure or ban, inside and outside judged',
  use: 'enforced by use: asked within the named use, stopped or asked beyond it',
  told: 'told as a condition where the substance is in, silent without it',
  'not-checkable': 'not checkable here',
  nothing: 'sets nothing (definition, deleted, superseded)',
}
/** Day on which the rows were compiled. */
const TODAY = '2026-11-25'
const DAY_BEFORE = '2026-12-31'

const counted = (n: number, words: string): string => `  ${String(n).padStart(4)} ${words}`

const world = buildWorld(buildKnowledge(loadRaw(join(import.meta.dirname, '../../graph-data'))))
const rows = lawRows()
const judged = rows.map((row) => judgeRow(world, row))
for (const [table, isOf] of [
  ['annex-v.csv', (fact: string) => fact.startsWith('EU-V-')],
  ['restricted.csv', (fact: string) => !fact.startsWith('EU-V-')],
] as const) {
  const own = judged.filter(({ row }) => isOf(row.fact))
  console.log(`\n${table}: ${own.length} rows`)
  for (const [outcome, words] of Object.entries(WORDS)) {
    const some = own.filter((one) => one.outcome === outcome)
    const wrong = some.filter(({ faults }) => faults.length > 0).length
    console.log(counted(some.length - wrong, `${wrong > 0 ? `(and ${wrong} wrong) ` : ''}${words}`))
  }
}
console.log('\nnot checkable here, with the reason')
for (const { reason, facts } of NOT_CHECKABLE) console.log(counted(facts.length, reason))

const checkable = judged.filter(({ outcome }) => outcome === 'figure' || outcome === 'use').map(({ row }) => row)
const uses = checkable.flatMap(bannedUses).map((use) => ({ ...use, fault: faultOfUse(world, use) }))
console.log('\nuses that rows ban')
for (const expected of ['stop', 'asked', 'told'] as const) {
  const some = uses.filter((use) => use.at !== null && use.expected === expected)
  console.log(counted(some.filter(({ fault }) => fault === null).length, `of ${some.length} judged: ${expected}`))
}
console.log(counted(uses.filter(({ at }) => at === null).length, 'for the mouth: not checkable here'))

const coming = checkable.filter(({ applies_from }) => applies_from > DAY_BEFORE)
const days = coming.map((row) => ({
  row,
  fault: faultOfDay(world, row, row.applies_from > '2027-01-01' ? TODAY : DAY_BEFORE),
}))
console.log(`\nlimits with a day after ${TODAY}`)
console.log(
  counted(days.filter(({ fault }) => fault === null).length, `of ${days.length} announced and not binding before it`),
)

const wrong = [
  ...judged.flatMap(({ row, faults }) => faults.map((fault) => `${row.fact}: ${fault}`)),
  ...uses.flatMap(({ row, use, fault }) => (fault === null ? [] : [`${row.fact}, ${use}: ${fault}`])),
  ...days.flatMap(({ row, fault }) => (fault === null ? [] : [`${row.fact}: ${fault}`])),
]
console.log(`\nwrong: ${wrong.length}`)
for (const line of wrong) console.log(`  ${line}`)
if (wrong.length > 0) process.exitCode = 1
