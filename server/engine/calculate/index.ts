import type { World } from '#engine/graph/world.ts'
import type { Worked } from '#engine/model/calculation.ts'
import type { CalculationInput, CalculationName } from '#engine/model/inputs/index.ts'
import { ACIDS } from './acids.ts'
import type { Calculations } from './calculation.ts'
import { EMULSIONS } from './emulsions.ts'
import { HLB_OF_ONE } from './hlb-of-one.ts'
import { MICROBES } from './microbes.ts'
import { MIXING } from './mixing.ts'
import { OILS } from './oils.ts'
import { PRESERVATION } from './preservation.ts'
import { PROFILE_DISTANCE } from './profile-distance.ts'
import { SOAP } from './soap.ts'
import { SURFACTANTS } from './surfactants.ts'

/** All calculations by name; the type demands one for every input schema. */
export const CALCULATIONS: Calculations<CalculationName> = {
  ...ACIDS,
  ...EMULSIONS,
  ...HLB_OF_ONE,
  ...MICROBES,
  ...MIXING,
  ...OILS,
  ...PRESERVATION,
  ...PROFILE_DISTANCE,
  ...SOAP,
  ...SURFACTANTS,
}

/**
 * One textbook calculation with its steps.
 * @throws RangeError "argument: expected …, got …" when the inputs lie outside of what the relation bears
 */
export const calculate = <N extends CalculationName>(world: World, name: N, input: CalculationInput<N>): Worked =>
  CALCULATIONS[name].run(input, world)
