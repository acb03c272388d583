import type { Say } from '#engine/words/say.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Addition } from './additive.ts'

type Caution = (say: Say) => string

const LYE: Caution = (say) =>
  say`Lye burns skin and eyes and heats up: goggles and gloves, lye into cold water and never water into lye, children and animals out of the room; rinse splashes with much water at once.`
const STRONG_ACID: Caution = (say) =>
  say`This acid burns skin, eyes and airways: goggles, gloves and fresh air, acid into water and never water into acid; rinse splashes with much water at once.`
const ACID: Caution = (say) =>
  say`Concentrated acid and its dust irritate skin and hurt eyes: goggles and gloves, acid into water and never water into acid.`
const BASE: Caution = (say) =>
  say`Concentrated bases irritate skin and hurt eyes: goggles and gloves, the base into the water.`
const AFTERWARDS: Caution = (say) =>
  say`Measure again after a day. A pH in the window does not mean that the product is preserved or mild: only a challenge test and an assessment of the product can tell.`

/** Substances that need no more than to be handled as salts are. */
const isStrong = ({ compound }: Addition): boolean => compound.acids.length === 0

function ofKind(addition: Addition): Caution {
  if (addition.kind === 'acid') return isStrong(addition) ? STRONG_ACID : ACID
  return isStrong(addition) ? LYE : BASE
}

/** What can hurt while this is done. */
export const hazardsOf = (addition: Addition | null, say: Say): string[] => [
  ...(addition
    ? [
        ofKind(addition)(say),
        ...addition.subject.cautions.map((caution) => say`${readableName(addition.inci)}: ${caution}`),
      ]
    : [ACID(say), LYE(say)]),
  AFTERWARDS(say),
]
