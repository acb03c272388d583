/** Runs the name cases and prints the share that passes, by kind, and every danger picked (the target is none). */
import { fileURLToPath } from 'node:url'
import { buildKnowledge, buildWorld, idOf, resolveNames } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { readTable } from '#load/read-table.ts'
import { idsBehind, passes, pickedDanger } from './name-case.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const world = buildWorld(buildKnowledge(loadRaw(`${root}/graph-data`)))
const cases = readTable(process.argv[2] ?? `${root}/test/reference/resolve-cases.csv`)
const same = (inci: string) => idsBehind(world, inci)

resolveNames(world, ['glycerin'])
const before_bytes = process.memoryUsage().heapUsed
const kinds = new Map<string, { all: number; passed: number }>()
const times_ms: number[] = []
let dangers = 0
for (const row of cases) {
  const start = performance.now()
  const [result] = resolveNames(world, [row['typed'] ?? ''])
  times_ms.push(performance.now() - start)
  if (!result) continue
  const ok = passes(row, result, same)
  const danger = pickedDanger(row, result, same)
  if (danger) dangers++
  const kind = kinds.get(row['kind'] ?? '') ?? { all: 0, passed: 0 }
  kinds.set(row['kind'] ?? '', { all: kind.all + 1, passed: kind.passed + (ok ? 1 : 0) })
  if (!ok || danger) {
    const got =
      result.status === 'found' ? result.ingredient : result.choices.map((choice) => choice.ingredient).join(' ')
    console.log(
      `${danger ? 'DANGER ' : ''}${row['id']} ${row['kind']} "${row['typed']}" wants ${row['expected'] || '-'} [${row['note']}]\n   ${result.status}: ${got} ${result.note ?? ''}`,
    )
  }
}
times_ms.sort((a, b) => a - b)
const at = (share: number) => (times_ms[Math.floor(times_ms.length * share)] ?? 0).toFixed(2)
for (const [kind, { all, passed }] of kinds) console.log(`${kind.padEnd(20)} ${passed}/${all}`)
const passed = [...kinds.values()].reduce((sum, kind) => sum + kind.passed, 0)
console.log(
  `passed ${passed}/${cases.length} (${((100 * passed) / cases.length).toFixed(1)} %), dangers picked ${dangers}`,
)
console.log(
  `p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, heap ${(before_bytes / 1e6).toFixed(0)} MB, ids checked with ${idOf.name}`,
)
