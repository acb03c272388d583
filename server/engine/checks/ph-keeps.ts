import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { distanceOutside } from '#engine/units/range.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:ph-keeps. Why, severity and worked cases: graph-data/rules/ph-keeps.yaml */
export const phKeeps: Check = ({ lines, ph, water_percent, world: { say } }) => {
  if (ph === null || water_percent < 1) return []
  return lines.flatMap(({ subject }) => {
    const window = rangeOfProperty(subject, 'ph_stability')
    const claim = usedClaim(subject, 'ph_stability')
    if (!window || !claim || distanceOutside(ph, window) === 0) return []
    const keeps = say.range(window)
    return [
      {
        about: [subject.id],
        message: say`${nameOf(subject)} keeps at pH ${keeps}; this formula is at pH ${say.short(ph)}`,
        remedy: say`Bring the pH to ${keeps} or take another ingredient for this pH`,
        because: [because(say`keeps at pH ${keeps}`, claim), because(say`pH ${say.short(ph)}`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
