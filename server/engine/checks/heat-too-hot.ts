import type { FormulaLine } from '#engine/formula/context.ts'
import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

const PHASE: Record<FormulaLine['phase'], (say: Say) => string> = {
  water: (say) => say`the water phase`,
  oil: (say) => say`the oil phase`,
  powder: (say) => say`the powder phase`,
  'cool-down': (say) => say`the cool-down phase`,
}

/** rule:heat-too-hot. Lines of the cool-down phase go in after the heat and are left alone. */
export const heatTooHot: Check = ({ lines, hottest_c, world: { say } }) => {
  if (hottest_c === null) return []
  return lines.flatMap(({ subject, phase }) => {
    const max_c = rangeOfProperty(subject, 'heat_max_c')?.max
    const claim = usedClaim(subject, 'heat_max_c')
    if (max_c === undefined || !claim || phase === 'cool-down' || hottest_c <= max_c) return []
    return [
      {
        about: [subject.id],
        message: say`${nameOf(subject)} bears up to ${max_c} °C; ${PHASE[phase](say)} goes to ${hottest_c} °C`,
        remedy: say`Add it in the cool-down phase, below ${max_c} °C`,
        because: [because(say`bears up to ${max_c} °C`, claim), because(say`hottest point ${hottest_c} °C`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
