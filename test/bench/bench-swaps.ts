import { findSwaps, idOf } from '#engine/index.ts'
import type { Formula, World } from '#engine/index.ts'
import { formulaOf, readCases } from '../score/swap-cases.ts'
import { grownWorld, worldOfUsual } from './grown-world.ts'
import { quantile, round, timesOf } from './measure.ts'
import { pick, random, shuffled } from './random.ts'
import { openRealWorld } from './real-world.ts'
import type { Row, Section } from './section.ts'

const CASES = 80
const ROUNDS = 3
const SEED = 12
const LIMIT = 10
const GROWN = [3_000, 30_000]
const SMALL = 450

interface Question {
  formula: Formula
  missing: string[]
}

interface Measured {
  row: Row
  median_ms: number
  p99_ms: number
}

/** A second line of the recipe that a maker would miss: no water. */
function secondOf(rnd: () => number, { formula, missing }: Question): string | undefined {
  const others = formula.lines.map(({ ingredient }) => ingredient)
  const free = others.filter((id) => id !== 'aqua' && !missing.includes(id))
  return free.length > 0 ? pick(rnd, [...new Set(free)]) : undefined
}

function measure(world: World, name: string, questions: readonly Question[]): Measured {
  const ask = (question: Question) => findSwaps(world, { ...question, limit: LIMIT })
  const answered = questions.filter((question) => ask(question).swaps.length > 0).length
  const times_ms = timesOf(questions, ask, ROUNDS)
  const [median_ms, p99_ms] = [quantile(times_ms, 0.5), quantile(times_ms, 0.99)]
  const row = {
    'stand-ins for a listed recipe': name,
    ingredients: world.subjects.length,
    'median ms': round(median_ms),
    'p99 ms': round(p99_ms),
    'slowest ms': round(quantile(times_ms, 1)),
    questions: questions.length,
    answered,
  }
  return { row, median_ms, p99_ms }
}

/** Stand-ins for one and for two missing lines of the listed cases, among the most usual ingredients, all, and more and more. */
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
  const named = one.flatMap(({ formula }) => formula.lines.map(({ ingredient }) => ingredient))
  const small = worldOfUsual(world, SMALL, named)
  const single = measure(small, 'one line missing', one)
  const pair = measure(small, 'two lines missing', two)
  const real = [measure(world, 'one line missing', one), measure(world, 'two lines missing', two)]
  const grown = GROWN.map((size) => measure(grownWorld(world, size), 'one line missing', one))
  const [less, more] = grown
  return {
    title: `Stand-ins for a listed recipe: ${CASES} seeded cases, fastest of ${ROUNDS} rounds; above ${world.subjects.length} ingredients made-up twins of real ones`,
    rows: [single, pair, ...real, ...grown].map(({ row }) => row),
    targets: [
      { text: `one missing among ${SMALL}: median under 8 ms`, reached: single.median_ms < 8 },
      { text: `one missing among ${SMALL}: 99 of 100 under 40 ms`, reached: single.p99_ms < 40 },
      { text: `two missing among ${SMALL}: median under 80 ms`, reached: pair.median_ms < 80 },
      {
        text: 'ten times as many ingredients take at most ten times as long',
        reached: less !== undefined && more !== undefined && more.median_ms <= 10 * less.median_ms,
      },
    ],
  }
}
