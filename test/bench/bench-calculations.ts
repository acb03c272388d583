import { calculate, CALCULATIONS } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { CalculationName } from '#engine/model/inputs/index.ts'
import { SAMPLES } from '../engine/calculate/samples.ts'
import { quantile, round } from './measure.ts'
import { openRealWorld } from './real-world.ts'
import type { Row, Section } from './section.ts'

const US_PER_MS = 1000
/** Each calculation runs as often as fits into this [ms], at least so many times. */
const TIME_MS = 150
const LEAST = 20

function timesOf(world: World, name: CalculationName): number[] {
  const times_us: number[] = []
  const until = performance.now() + TIME_MS
  while (times_us.length < LEAST || performance.now() < until) {
    const start = performance.now()
    calculate(world, name, SAMPLES[name] as never)
    times_us.push((performance.now() - start) * US_PER_MS)
  }
  return times_us.slice(Math.floor(times_us.length / 2)) // the first half is compiled on the way
}

/** One usual question for every calculation there is. */
export function benchCalculations(): Section {
  const world = openRealWorld()
  const rows = (Object.keys(CALCULATIONS) as CalculationName[]).map((name): Row => {
    const times_us = timesOf(world, name)
    return { calculation: name, 'p50 us': round(quantile(times_us, 0.5)), 'p99 us': round(quantile(times_us, 0.99)) }
  })
  return { title: 'Every calculation with one usual question', rows, targets: [] }
}
