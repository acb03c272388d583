import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Check } from './check.ts'
import { heatAsked } from './heat-too-low.ts'
import { because, nameOf } from './say.ts'

/** rule:heat-unknown. A process heat that nobody stated is reported, never guessed. */
export const heatUnknown: Check = ({ lines, hottest_c }) => {
  if (hottest_c !== null) return []
  const bound = lines.filter(
    (line) => line.phase !== 'cool-down' && (heatAsked(line) ?? rangeOfProperty(line.subject, 'heat_max_c')),
  )
  if (bound.length === 0) return []
  return [
    {
      about: [],
      message: `The hottest point of the process is not known; ${bound.length} ingredients depend on it (${bound
        .slice(0, 3)
        .map(({ subject }) => nameOf(subject))
        .join(', ')}${bound.length > 3 ? ' …' : ''})`,
      remedy: 'Enter the highest temperature that a phase reaches while you make it; 25 for a cold process',
      because: [because('no temperature was given')],
      sources: [],
    },
  ]
}
