import { findSwaps, idOf } from '#engine/index.ts'
import type { Formula, World } from '#engine/index.ts'
import { formulaOf, readCases } from '../score/swap-cases.ts'
import { quantile, round } from './measure.ts'
import { pick, random, shuffled } from './random.ts'
import { openRealWorld } from './real-world.ts'
import type { Row, Section } from './section.ts'

const CASES = 40
const SEED = 12
const LIMIT = 10

interface Question {
  formula: Formula
  missing: string[]
}

/** A second line of the recipe that a maker would miss: no water. */
function secondOf(rnd: () => number, { formula, missing }: Question): string | undefined {
  const others = formula.lines.map(({ ingredient }) => ingredient)
  const free = others.filter((id) => id !== 'aqua' && !missing.includes(id))
  return free.length > 0 ? pick(rnd, [...new Set(free)]) : undefined
}

function rowOf(world: World, name: string, questions: readonly Question[]): Row {
  const found = questions.map((question) => {
    const start = performance.now()
    const { swaps } = findSwaps(world, { ...question, limit: LIMIT })
    return { time_ms: performance.now() - start, answered: swaps.length > 0 }
  })
  const times_ms = found.map(({ time_ms }) => time_ms)
  return {
    'swaps over the real graph': name,
    'median ms': round(quantile(times_ms, 0.5)),
    'p99 ms': round(quantile(times_ms, 0.99)),
    'slowest ms': round(quantile(times_ms, 1)),
    questions: questions.length,
    answered: found.filter(({ answered }) => answered).length,
  }
}

/** Stand-ins for one and for two missing lines of the listed cases. */
export function benchSwaps(): Section {
  const world = openRealWorld()
  const rnd = random(SEED)
  const one = shuffled(rnd, readCases('swaps'))
    .slice(0, CASES)
    .map((single): Question => ({ formula: formulaOf(single), missing: [idOf(single.missing)] }))
  const two = one.flatMap((question): Question[] => {
    const second = secondOf(rnd, question)
    return second === undefined ? [] : [{ ...question, missing: [...question.missing, second] }]
  })
  for (const question of one.slice(0, 5)) findSwaps(world, { ...question, limit: LIMIT }) // compiled by now
  return {
    title: `Stand-ins for a listed recipe, ${CASES} seeded cases, each asked once`,
    rows: [rowOf(world, 'one line missing', one), rowOf(world, 'two lines missing', two)],
    targets: [],
  }
}
