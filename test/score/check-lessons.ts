/**
 * Lessons against the graph: their shape, every statement, the live example; what is false is printed with what the graph
 * says. `node --import tsx test/score/check-lessons.ts [id…]`; without ids all lessons. Exits with 1 when one is faulty.
 */
import { join } from 'node:path'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'
import { faultsOfFile, lessonFiles } from './lesson-faults.ts'

const raw = loadRaw(join(import.meta.dirname, '../../graph-data'))
const world = buildWorld(buildKnowledge(raw))
const asked = process.argv.slice(2).map((id) => id.replace(/^.*\/|\.yaml$/g, ''))
const files = lessonFiles(raw, asked)
const missing = asked.filter((id) => !files.some(({ path }) => path.endsWith(`/${id}.yaml`)))
for (const id of missing) console.log(`${id}: there is no such file in graph-data/lessons`)

let faulty = missing.length
for (const file of files) {
  const faults = faultsOfFile(raw, world, file)
  if (faults.length > 0) faulty++
  for (const { path, message } of faults) console.log(`${path}: ${message}`)
}
console.log(`${files.length} lessons checked, ${faulty} with faults`)
process.exitCode = faulty > 0 ? 1 : 0
