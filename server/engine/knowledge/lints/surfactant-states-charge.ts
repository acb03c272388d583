import { CHARGES, hasAny } from './facts.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'
import { fileOf } from './places.ts'

/** Guards against a surfactant without charge: anionic and cationic bind each other, and nobody would be warned. */
export const surfactantStatesCharge: Lint = (_raw, vocabulary) =>
  membersOf(vocabulary)
    .filter(({ ingredient, allRoles }) => allRoles.has('surfactant') && !hasAny(ingredient, CHARGES))
    .map(({ ingredient }) => ({
      path: `${fileOf(ingredient)}/classes`,
      message: `a surfactant is one of ${CHARGES.join(', ')}`,
    }))
