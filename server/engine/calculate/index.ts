import type { World } from '#engine/graph/world.ts'
import type { Worked } from '#engine/model/calculation.ts'
import type { CalculationInput, CalculationName } from '#engine/model/inputs/index.ts'
import type { Calculations } from './calculation.ts'
import { MIXING } from './mixing.ts'
import { PRESERVATION } from './preservation.ts'

/** All calculations by name; the type demands one for every input schema. */
export const CALCULATIONS: Calculations<CalculationName> = { ...MIXING, ...PRESERVATION }

/**
 * One textbook calculation with its steps.
 * @throws RangeError "argument: expected …, got …" when the inputs lie outside of what the relation bears
 */
export const calculate = <N extends CalculationName>(world: World, name: N, input: CalculationInput<N>): Worked =>
  CALCULATIONS[name].run(input, world)
