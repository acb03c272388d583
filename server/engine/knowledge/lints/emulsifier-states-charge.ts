import { CHARGES, hasAny } from './facts.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'
import { fileOf } from './places.ts'

/** Guards against an emulsifier without charge: every clash of charges would pass it by. */
export const emulsifierStatesCharge: Lint = (_raw, vocabulary) =>
  membersOf(vocabulary)
    .filter(({ ingredient, allRoles }) => allRoles.has('emulsifier') && !hasAny(ingredient, CHARGES))
    .map(({ ingredient }) => ({
      path: `${fileOf(ingredient)}/classes`,
      message: `an emulsifier is one of ${CHARGES.join(', ')}`,
    }))
