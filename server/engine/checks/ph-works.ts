import { rangeOfProperty, usedClaim } from '#engine/graph/subject.ts'
import { distanceOutside } from '#engine/units/range.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** Roles that are played only inside the working window; an acid that sets the pH works at any. */
const LIVES_BY_PH = ['thickener', 'chelator', 'active', 'conditioning-agent', 'film-former', 'surfactant']

/** rule:ph-works. Thickeners, chelators, conditioners and actives; preservatives have a rule of their own. */
export const phWorks: Check = (context) => {
  const { lines, ph, water_percent, world } = context
  const { say } = world
  if (ph === null || water_percent < 1) return []
  return lines.flatMap(({ subject }) => {
    const role = context.rolesOf(subject)[0]?.role ?? ''
    const above = world.roles.above(role)
    if (!LIVES_BY_PH.some((one) => above.includes(one))) return []
    const window = rangeOfProperty(subject, 'ph_effective')
    const claim = usedClaim(subject, 'ph_effective')
    if (!window || !claim || distanceOutside(ph, window) === 0) return []
    const works = say.range(window)
    return [
      {
        about: [subject.id],
        message: say`${nameOf(subject)} works at pH ${works}; at pH ${say.short(ph)} it does little`,
        remedy: say`Bring the pH to ${works} or expect little of it`,
        because: [because(say`works at pH ${works}`, claim), because(say`pH ${say.short(ph)}`)],
        sources: sourcesOf(claim),
      },
    ]
  })
}
