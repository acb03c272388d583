import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Check } from './check.ts'
import { heatAsked } from './heat-too-low.ts'
import { because, firstNames } from './say.ts'

/** rule:heat-unknown. A process heat that nobody stated is reported, never guessed. */
export const heatUnknown: Check = ({ lines, hottest_c, world: { say } }) => {
  if (hottest_c !== null) return []
  const bound = lines.filter(
    (line) => line.phase !== 'cool-down' && (heatAsked(line) ?? rangeOfProperty(line.subject, 'heat_max_c')),
  )
  if (bound.length === 0) return []
  return [
    {
      about: [],
      message: say`The hottest point of the process is not known; ${bound.length} ingredients depend on it (${firstNames(bound)})`,
      remedy: say`Enter the highest temperature that a phase reaches while you make it; 25 for a cold process`,
      because: [because(say`no temperature was given`)],
      sources: [],
    },
  ]
}
