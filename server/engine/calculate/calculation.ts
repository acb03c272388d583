import type { World } from '#engine/graph/world.ts'
import type { CalculationInput, CalculationName } from '#engine/model/inputs/index.ts'
import type { Worked } from '#engine/model/calculation.ts'

/** One calculation of the page: its question in words and the working. @throws RangeError naming the argument that is out of range */
export interface Calculation<N extends CalculationName> {
  /** what a student reads above it */
  title: string
  run(input: CalculationInput<N>, world: World): Worked
}

/** Calculations of one topic, each under its own name. */
export type Calculations<N extends CalculationName> = { [K in N]: Calculation<K> }
