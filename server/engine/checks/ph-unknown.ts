import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Check } from './check.ts'
import { because, firstNames } from './say.ts'

/** rule:ph-unknown. A pH that nobody stated is reported, never guessed. */
export const phUnknown: Check = ({ lines, ph, water_percent, world: { say } }) => {
  if (ph !== null || water_percent < 3) return []
  const bound = lines.filter(
    ({ subject }) => rangeOfProperty(subject, 'ph_stability') || rangeOfProperty(subject, 'ph_effective'),
  )
  if (bound.length === 0) return []
  return [
    {
      about: [],
      message: say`The pH is not known; ${bound.length} ingredients depend on it (${firstNames(bound)})`,
      remedy: say`Measure the pH of the finished batch, or enter the pH you aim at`,
      because: [because(say`no pH was given`)],
      sources: [],
    },
  ]
}
