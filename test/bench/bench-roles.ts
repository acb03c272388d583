import { quantile, round, timesOf, used_mb } from './measure.ts'
import { graphEngine, scanEngine, screenEngine, traversalEngine } from './role-engines.ts'
import type { RoleEngine } from './role-engines.ts'
import { makeGraph, makeQuestions } from './role-question.ts'
import type { MadeGraph } from './role-question.ts'
import type { Row, Section } from './section.ts'

const SIZES = [300, 3_000, 30_000]
const QUESTIONS = 300
const ROUNDS = 3
const US_PER_MS = 1000

const ENGINES: Record<string, (graph: MadeGraph) => RoleEngine> = {
  'our index (screen)': screenEngine,
  'typed arrays, one by one': scanEngine,
  graphology: graphEngine,
  'graphology-traversal': traversalEngine,
}

interface Measured {
  row: Row
  name: string
  answers: number[][]
  p50_us: number
}

function measure(name: string, graph: MadeGraph): Measured {
  const questions = makeQuestions(graph, QUESTIONS)
  const before_mb = used_mb()
  const start = performance.now()
  const engine = ENGINES[name]!(graph)
  const build_ms = performance.now() - start
  const memory_mb = used_mb() - before_mb
  const answers = questions.map(engine)
  const times_us = timesOf(questions, engine, ROUNDS).map((time_ms) => time_ms * US_PER_MS)
  const p50_us = quantile(times_us, 0.5)
  const row = {
    'who may stand in: way': name,
    ingredients: graph.ingredients.length,
    'p50 us': round(p50_us),
    'p99 us': round(quantile(times_us, 0.99)),
    'build ms': round(build_ms),
    MB: Math.max(0, round(memory_mb, 2)),
    'mean answers': Math.round(answers.flat().length / answers.length),
  }
  return { row, name, answers, p50_us }
}

/** Shared role, pH window, heat limit, no clash with eleven other lines, over made-up ingredients. */
export function benchRoles(): Section {
  const measured = SIZES.flatMap((size) => {
    const graph = makeGraph(size)
    return Object.keys(ENGINES).map((name) => ({ size, ...measure(name, graph) }))
  })
  const of = (size: number, name: string) => measured.find((one) => one.size === size && one.name === name)!
  const ours = (size: number) => of(size, 'our index (screen)')
  const same = measured.every(({ size, answers }) => JSON.stringify(answers) === JSON.stringify(ours(size).answers))
  const largest = SIZES.at(-1)!
  return {
    title: `Who shares a role, keeps at the pH, bears the heat and clashes with none of eleven others: ${QUESTIONS} seeded questions`,
    rows: measured.map(({ row }) => row),
    targets: [
      { text: 'all ways give the same ids in the same order', reached: same },
      {
        text: `our index no slower than one by one in flat arrays at ${largest}`,
        reached: ours(largest).p50_us <= of(largest, 'typed arrays, one by one').p50_us,
      },
    ],
  }
}
