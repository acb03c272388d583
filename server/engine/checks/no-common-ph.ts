import { usedClaim } from '#engine/graph/subject.ts'
import type { Check } from './check.ts'
import { becauseOf, nameOf, sourcesOf } from './say.ts'

/** rule:no-common-ph. Read off the compatibility edges: two windows that do not meet suit no pH at all. */
export const noCommonPh: Check = ({ lines: all, world, water_percent }) => {
  const { say } = world
  if (water_percent < 1) return []
  const lines = all.filter(({ subject }) => world.holdsWith.nodes.get(subject.id)?.ph !== undefined)
  return lines.flatMap((a, index) =>
    lines.slice(index + 1).flatMap((b) => {
      if (a.subject.id === b.subject.id || world.holdsWith.between(a.subject.id, b.subject.id).ph !== null) return []
      const claims = [a, b].flatMap(({ subject }) => usedClaim(subject, 'ph_stability') ?? [])
      return [
        {
          about: [a.subject.id, b.subject.id].sort(),
          message: say`There is no pH at which both ${nameOf(a.subject)} and ${nameOf(b.subject)} keep`,
          remedy: say`Replace one of the two`,
          because: claims.map((claim) => becauseOf(say`keeps at pH`, claim, say)),
          sources: sourcesOf(...claims),
        },
      ]
    }),
  )
}
