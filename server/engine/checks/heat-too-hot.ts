import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:heat-too-hot. Lines of the cool-down phase go in after the heat and are left alone. */
export const heatTooHot: Check = ({ lines, hottest_c }) => {
  if (hottest_c === null) return []
  return lines.flatMap(({ subject, phase }) => {
    const max_c = rangeOfProperty(subject, 'heat_max_c')?.max
    const claim = usedClaim(subject, 'heat_max_c')
    if (max_c === undefined || !claim || phase === 'cool-down' || hottest_c <= max_c) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} bears up to ${max_c} °C; the ${phase} phase goes to ${hottest_c} °C`,
        remedy: `Add it in the cool-down phase, below ${max_c} °C`,
        because: [because(`bears up to ${max_c} °C`, claim), because(`hottest point ${hottest_c} °C`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
