import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import { short } from '#engine/units/round.ts'
import { distanceOutside, rangeText } from '#engine/units/range.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:preservative-window. Why, severity and worked cases: graph-data/rules/preservative-window.yaml */
export const preservativeWindow: Check = (context) => {
  const { ph, water_percent } = context
  if (ph === null || water_percent < 1) return []
  return linesPlayingHere(context, 'preservative').flatMap(({ subject }) => {
    const window = rangeOfProperty(subject, 'ph_effective')
    const claim = usedClaim(subject, 'ph_effective')
    if (!window || !claim || distanceOutside(ph, window) === 0) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} preserves at pH ${rangeText(window)}; at pH ${short(ph)} too little of it is at work`,
        remedy: `Bring the pH to ${rangeText(window)}, or preserve with something that works at pH ${short(ph)}; only a challenge test can tell`,
        because: [because(`preserves at pH ${rangeText(window)}`, claim), because(`pH ${short(ph)}`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
