import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'
import { fileOf } from './places.ts'

/** Guards against an acid or base without pKa: neither its free share nor its dose could be worked out. */
export const acidStatesConstant: Lint = (_raw, vocabulary) =>
  membersOf(vocabulary)
    .filter(({ allRoles }) => allRoles.has('acid') || allRoles.has('base') || allRoles.has('buffer'))
    .filter(({ ingredient }) => !decidedRange(ingredient, 'acid_pka'))
    .map(({ ingredient }) => ({
      path: `${fileOf(ingredient)}/facts`,
      message: 'an acid, base or buffer without acid_pka',
    }))
