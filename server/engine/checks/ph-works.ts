import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { short } from '#engine/units/round.ts'
import { distanceOutside, rangeText } from '#engine/units/range.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** Roles that are played only inside the working window; an acid that sets the pH works at any. */
const LIVES_BY_PH = ['thickener', 'chelator', 'active', 'conditioning-agent', 'film-former', 'surfactant']

/** rule:ph-works. Thickeners, chelators, conditioners and actives; preservatives have a rule of their own. */
export const phWorks: Check = (context) => {
  const { lines, ph, water_percent } = context
  if (ph === null || water_percent < 1) return []
  return lines.flatMap(({ subject }) => {
    const role = context.rolesOf(subject)[0]?.role ?? ''
    const above = context.world.roles.above(role)
    if (!LIVES_BY_PH.some((one) => above.includes(one))) return []
    const window = rangeOfProperty(subject, 'ph_effective')
    const claim = usedClaim(subject, 'ph_effective')
    if (!window || !claim || distanceOutside(ph, window) === 0) return []
    return [
      {
        about: [subject.id],
        message: `${nameOf(subject)} works at pH ${rangeText(window)}; at pH ${short(ph)} it does little`,
        remedy: `Bring the pH to ${rangeText(window)} or expect little of it`,
        because: [because(`works at pH ${rangeText(window)}`, claim), because(`pH ${short(ph)}`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
