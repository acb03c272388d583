import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { round } from './measure.ts'
import type { Row, Section } from './section.ts'

const RUNS = 3
const MOST_MS = 1500
const MOST_MB = 400
const STEPS = ['files read', 'records', 'graph and indices', 'all lints', 'all names indexed, one looked up'] as const
/** Steps that make the graph; the lints and the index of names come after. */
const GRAPH_STEPS = 3
/** As `npm start` has it: what is made while the graph is built outlives a small nursery. */
const YOUNG = ['--max-semi-space-size=32']
/** Keeps a process on one core where the system has it. */
const ONE_CORE = '/usr/bin/taskset'

interface Cold {
  /** per step: by the clock, in time of the processor [ms] */
  figures: [clock_ms: number, cpu_ms: number][]
  peak_mb: number
  peak_after_mb: number
}

function runCold(): Cold {
  const node = [process.execPath, ...YOUNG, '--import', 'tsx', join(import.meta.dirname, 'cold-start.ts')]
  const [command = '', ...args] = existsSync(ONE_CORE) ? [ONE_CORE, '-c', '0', ...node] : node
  const { stdout, stderr, status } = spawnSync(command, args, { encoding: 'utf8' })
  if (status !== 0) throw new Error(`cold build: ${stderr}`)
  return JSON.parse(stdout) as Cold
}

const sum = (list: readonly number[]): number => list.reduce((total, one) => total + one, 0)
const graph_ms = ({ figures }: Cold): number => sum(figures.slice(0, GRAPH_STEPS).map(([, cpu_ms]) => cpu_ms))

/** The graph from its files, each time in a new process. The fastest run counts: what others take is not ours. */
export function benchCold(): Section {
  const runs = Array.from({ length: RUNS }, runCold).sort((a, b) => graph_ms(a) - graph_ms(b))
  const best = runs[0]!
  const peak_mb = Math.max(...runs.map((run) => run.peak_mb))
  const row = (step: string, [clock_ms, cpu_ms]: readonly [number, number]): Row => ({
    'cold build': step,
    'cpu ms': Math.round(cpu_ms),
    'clock ms': Math.round(clock_ms),
  })
  const built = best.figures.slice(0, GRAPH_STEPS)
  const total = [sum(built.map(([clock_ms]) => clock_ms)), sum(built.map(([, cpu_ms]) => cpu_ms))] as const
  return {
    title: `Cold build from the files on one core: the fastest of ${RUNS} processes, largest memory of all ${round(peak_mb)} MB (${round(best.peak_after_mb)} MB after lints and names)`,
    rows: [
      ...built.map((figure, n) => row(STEPS[n]!, figure)),
      row('graph, in all', total),
      ...best.figures.slice(GRAPH_STEPS).map((figure, n) => row(`then: ${STEPS[GRAPH_STEPS + n]}`, figure)),
    ],
    targets: [
      { text: `graph built in less than ${MOST_MS} ms of one core`, reached: total[1] < MOST_MS },
      { text: `memory below ${MOST_MB} MB`, reached: peak_mb < MOST_MB },
    ],
  }
}
