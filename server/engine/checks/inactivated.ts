import { matches } from '#engine/knowledge/selector.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** rule:inactivated. What a neighbour takes away from a preservative or another ingredient; a note, since how much is not computed here. */
export const inactivated: Check = ({ lines }) =>
  lines.flatMap((line) =>
    line.subject.inactivatedBy.flatMap((relation) => {
      const takers = lines.filter(
        (other) =>
          other.subject.id !== line.subject.id &&
          other.share_percent >= (relation.min_percent ?? 0.5) &&
          matches(relation.with, other.subject),
      )
      const [taker] = takers
      if (!taker) return []
      return [
        {
          about: [line.subject.id, taker.subject.id].sort(),
          message: `${nameOf(taker.subject)} takes away part of ${nameOf(line.subject)}${relation.says ? `: ${relation.says}` : ''}`,
          remedy: 'Count on less of it at work; a challenge test decides',
          because: [because(relation.says || 'is inactivated by it'), because(`${nameOf(taker.subject)} is present`)],
          sources: sourcesOf(relation),
        },
      ]
    }),
  )
