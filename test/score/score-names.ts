/**
 * Runs the name cases: `npm run score:names [-- file.csv] [--misses]`. Prints by kind how many are answered right, how
 * many are asked about with the right one among the choices, how many go wrong, and every danger picked (none may be).
 */
import { fileURLToPath } from 'node:url'
import { buildKnowledge, buildWorld, resolveNames } from '#engine/index.ts'
import type { ResolveResult } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { readTable } from '#load/read-table.ts'
import { asksRight, idsBehind, passes, pickedDanger } from './name-case.ts'

type Row = Record<string, string>

interface Judged {
  row: Row
  result: ResolveResult
  /** the answer that the case asks for, which may be a question or a refusal */
  right: boolean
  /** a question where an answer was asked for, the right one among the choices */
  asked: boolean
  danger: boolean
  time_ms: number
}

const root = fileURLToPath(new URL('../..', import.meta.url))
const world = buildWorld(buildKnowledge(loadRaw(`${root}/graph-data`)))
const same = (inci: string): string => idsBehind(world, inci)
const file = process.argv.slice(2).find((arg) => !arg.startsWith('--'))

function judge(row: Row): Judged {
  const start = performance.now()
  const [result] = resolveNames(world, [row['typed'] ?? ''])
  const time_ms = performance.now() - start
  if (!result) throw new Error(`${row['id']}: no reply`)
  const right = passes(row, result, same)
  return {
    row,
    result,
    right,
    asked: !right && asksRight(row, result, same),
    danger: pickedDanger(row, result, same),
    time_ms,
  }
}

function print(name: string, list: readonly Judged[]): void {
  const count = (test: (one: Judged) => boolean): number => list.filter(test).length
  const right = count((one) => one.right)
  const asked = count((one) => one.asked)
  const share = (100 * (right + asked)) / list.length
  const cells = [list.length, right, asked, list.length - right - asked, count((one) => one.danger)]
  console.log(
    name.padEnd(22) + cells.map((cell) => String(cell).padStart(10)).join('') + `${share.toFixed(1)} %`.padStart(12),
  )
}

function miss({ row, result, danger }: Judged): string {
  const ids = result.ingredient ?? result.choices.map(({ ingredient }) => ingredient).join(' ')
  const what = `${danger ? 'DANGER ' : ''}${row['id']} ${row['kind']} "${row['typed']}" wants ${row['expected'] || '-'}`
  return `${what}${row['note'] ? ` [${row['note']}]` : ''}\n   ${result.status}: ${ids} ${result.note ?? ''}`
}

resolveNames(world, ['glycerin']) // builds the index
const judged = readTable(file ?? `${root}/test/reference/resolve-cases.csv`).map(judge)
for (const one of judged) if (one.danger || (!one.right && process.argv.includes('--misses'))) console.log(miss(one))

const heads = ['cases', 'right', 'asked', 'wrong', 'dangers', 'right+asked']
console.log(`${'kind'.padEnd(22)}${heads.map((head, n) => head.padStart(n < 5 ? 10 : 12)).join('')}`)
for (const kind of new Set(judged.map(({ row }) => row['kind'] ?? ''))) {
  print(
    kind,
    judged.filter(({ row }) => row['kind'] === kind),
  )
}
print('all', judged)
const refused = judged.filter(({ row }) => /^(nonsense|not-in-inventory)$/.test(row['kind'] ?? ''))
print('nonsense refused', refused)
const times_ms = judged.map(({ time_ms }) => time_ms).sort((a, b) => a - b)
const at = (share: number): string => (times_ms[Math.floor(times_ms.length * share)] ?? 0).toFixed(2)
console.log(`half of the names in ${at(0.5)} ms, 99 of 100 in ${at(0.99)} ms`)
