/** One cold build of the graph in a process of its own; prints its times [ms] and its largest memory [MB] as JSON. */
import { performance } from 'node:perf_hooks'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import { searchNames } from '#engine/knowledge/search-names.ts'
import { loadRaw } from '#load/load-raw.ts'
import { DATA } from './real-world.ts'

function cpu_ms(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

/** Runs a step and notes how long it took, by the clock and in time of the processor. */
function timed<T>(work: () => T): { result: T; clock_ms: number; cpu_ms: number } {
  const clock = performance.now()
  const cpu = cpu_ms()
  const result = work()
  return { result, clock_ms: performance.now() - clock, cpu_ms: cpu_ms() - cpu }
}

const files = timed(() => loadRaw(DATA))
const knowledge = timed(() => buildKnowledge(files.result))
const world = timed(() => buildWorld(knowledge.result))
const peak_mb = process.resourceUsage().maxRSS / 1000
const faults = timed(() => knowledge.result.problems.length)
const names = timed(() => searchNames(world.result.knowledge, 'glycerin', 1))
const figures = [files, knowledge, world, faults, names].map(({ clock_ms, cpu_ms: used_ms }) => [clock_ms, used_ms])
console.log(JSON.stringify({ figures, peak_mb, peak_after_mb: process.resourceUsage().maxRSS / 1000 }))
