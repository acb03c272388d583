import type { Range } from '#engine/units/range.ts'
import { rangeText } from '#engine/units/range.ts'
import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

const holds = (outer: Range, inner: Range): boolean =>
  (outer.min ?? -Infinity) <= (inner.min ?? -Infinity) && (outer.max ?? Infinity) >= (inner.max ?? Infinity)

/** Guards against windows that contradict each other: nothing does its job at a pH at which it does not keep. */
export const worksWhereItKeeps: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) => {
    const keeps = decidedRange(ingredient, 'ph_stability')
    const works = decidedRange(ingredient, 'ph_effective')
    // An open end says that no limit was found there, not that there is none.
    if (!keeps || !works || holds(keeps, closedBy(works, keeps))) return []
    return [
      {
        path: `${fileOf(ingredient)}/facts/ph_effective`,
        message: `works at pH ${rangeText(works)} and keeps at pH ${rangeText(keeps)}`,
      },
    ]
  })

function closedBy(works: Range, keeps: Range): Range {
  const min = works.min ?? keeps.min
  const max = works.max ?? keeps.max
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) }
}
