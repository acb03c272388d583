import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'
import { fileOf } from './places.ts'

const MELTED_IN = ['structurant', 'emollient']

/** Guards against a fat or wax that must not be heated to the point at which it melts; what only dissolves in oil may be. */
export const fatMeltsBelowItsLimit: Lint = (_raw, vocabulary) =>
  membersOf(vocabulary).flatMap(({ ingredient, allRoles }) => {
    if (!MELTED_IN.some((role) => allRoles.has(role))) return []
    const heat_max_c = decidedRange(ingredient, 'heat_max_c')?.max
    const melting_c = decidedRange(ingredient, 'melting_c')?.min
    if (heat_max_c === undefined || melting_c === undefined || melting_c <= heat_max_c) return []
    return [
      {
        path: `${fileOf(ingredient)}/facts/heat_max_c`,
        message: `melts at ${melting_c} C and bears only ${heat_max_c} C`,
      },
    ]
  })
