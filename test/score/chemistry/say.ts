import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { calculate } from '#engine/index.ts'
import type { CalculationInput, CalculationName } from '#engine/model/inputs/index.ts'
import { realWorld } from '../../helpers.ts'
import type { Example } from './example.ts'

/** A committed file of test/reference/chemistry, parsed. */
export const readReference = <T>(name: string): T =>
  JSON.parse(readFileSync(fileURLToPath(new URL(`../../reference/chemistry/${name}`, import.meta.url)), 'utf8')) as T

/** One value of a calculation on the real data; NaN where there is none. */
export const worked = <N extends CalculationName>(name: N, input: CalculationInput<N>, value: string): number =>
  calculate(realWorld(), name, input).values[value] ?? Number.NaN

const digits = (value: number): string => String(Number(value.toPrecision(5)))

interface Printed {
  topic: string
  id: string
  flagged?: boolean
  unit?: string
}

/** A number beside the printed one. */
export function near(printed: Printed, expected: number, tolerance: number, got: number): Example {
  const unit = printed.unit ? ` ${printed.unit}` : ''
  return {
    topic: printed.topic,
    id: printed.id,
    flagged: printed.flagged ?? false,
    expected: `${digits(expected)}${unit} ± ${digits(tolerance)}`,
    got: `${digits(got)}${unit}`,
    within: Math.abs(got - expected) <= tolerance + 1e-9,
  }
}

/** Half of the last printed digit of ranges that are printed as whole numbers or with one decimal. */
const ROUNDING = 0.05

/** A number beside a printed range. */
export function inRange(printed: Printed, [min, max]: readonly [number, number], got: number): Example {
  const unit = printed.unit ? ` ${printed.unit}` : ''
  return {
    topic: printed.topic,
    id: printed.id,
    flagged: printed.flagged ?? false,
    expected: `${digits(min)} to ${digits(max)}${unit}`,
    got: `${digits(got)}${unit}`,
    within: got >= min - ROUNDING && got <= max + ROUNDING,
  }
}
