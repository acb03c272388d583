import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { short } from '#engine/units/round.ts'
import { distanceOutside, rangeText } from '#engine/units/range.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:ph-keeps. Why, severity and worked cases: graph-data/rules/ph-keeps.yaml */
export const phKeeps: Check = ({ lines, ph, water_percent }) => {
  if (ph === null || water_percent < 1) return []
  return lines.flatMap(({ subject }) => {
    const window = rangeOfProperty(subject, 'ph_stability')
    const claim = usedClaim(subject, 'ph_stability')
    if (!window || !claim || distanceOutside(ph, window) === 0) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} keeps at pH ${rangeText(window)}; this formula is at pH ${short(ph)}`,
        remedy: `Bring the pH to ${rangeText(window)} or take another ingredient for this pH`,
        because: [because(`keeps at pH ${rangeText(window)}`, claim), because(`pH ${short(ph)}`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
