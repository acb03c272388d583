/** Runs the listed substitution cases through the engine and prints how the answers score. Not a timed test. */
import { join } from 'node:path'
import { buildKnowledge, buildWorld, findSwaps, idOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { formulaOf, names, readCases } from './swap-cases.ts'
import type { SwapCase } from './swap-cases.ts'

export interface CaseScore {
  id: string
  group: string
  noSafe: boolean
  refusedAll: boolean
  /** place of the first accepted answer, from 1; Infinity when none */
  place: number
  unsafe: string[]
  answers: string[][]
  leaveOutRight: boolean
}

const FIRST = 5

export function scoreCase(world: World, one: SwapCase, withAreas: boolean): CaseScore {
  const reply = findSwaps(world, { formula: formulaOf(one, withAreas), missing: [idOf(one.missing)], limit: 10 })
  const answers = reply.swaps.map(({ lines }) => lines.map(({ ingredient }) => ingredient))
  const place = answers.findIndex((answer) => one.accept.some((entry) => names(answer, entry)))
  const bad = one.avoid.filter(({ severity }) => severity === 'unsafe' || severity === 'breaks')
  return {
    id: one.id,
    group: one.group,
    noSafe: one.no_safe_swap,
    refusedAll: answers.length === 0,
    place: place < 0 ? Infinity : place + 1,
    unsafe: answers.slice(0, FIRST).filter((answer) => bad.some((entry) => names(answer, entry))).map((answer) => answer.join(' + ')),
    answers,
    leaveOutRight: reply.leaveOut.verdict === one.leave_out,
  }
}

const percent = (part: number, whole: number): string => (whole === 0 ? '–' : `${((part / whole) * 100).toFixed(1)} %`)

function row(name: string, scores: readonly CaseScore[]): string {
  const rated = scores.filter(({ noSafe }) => !noSafe)
  const noSafe = scores.filter((score) => score.noSafe)
  const hit = (k: number) => rated.filter(({ place }) => place <= k).length
  const mrr = rated.reduce((sum, { place }) => sum + 1 / place, 0) / Math.max(1, rated.length)
  return [
    name.padEnd(14),
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

const HEAD = 'group          rated   hit@1    hit@3    MRR  unsafe  no-safe  silent  leave-out'

function main(): void {
  const world = buildWorld(buildKnowledge(loadRaw(join(import.meta.dirname, '../../graph-data'))))
  const cases = readCases()
  const verbose = process.argv.includes('--verbose')
  for (const withAreas of [true, false]) {
    const scores = cases.map((one) => scoreCase(world, one, withAreas))
    console.log(`\n${withAreas ? 'areas of use told' : 'areas of use not told'}\n${HEAD}`)
    for (const group of [...new Set(cases.map((one) => one.group))].sort()) {
      console.log(row(group, scores.filter((score) => score.group === group)))
    }
    console.log(row('all', scores))
    if (verbose && withAreas) {
      for (const score of scores) {
        const one = cases.find(({ id }) => id === score.id)
        console.log(`${score.id} ${score.group} ${one?.missing}: place ${score.place}${score.unsafe.length ? ` UNSAFE ${score.unsafe}` : ''}${score.noSafe ? ' (no safe swap)' : ''}\n    ${score.answers.slice(0, 6).map((a) => a.join('+')).join(' | ')}`)
      }
    }
    for (const { id, unsafe } of scores) if (unsafe.length > 0) console.log(`  unsafe in ${id}: ${unsafe.join(', ')}`)
  }
}

main()
