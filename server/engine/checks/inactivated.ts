import { matches } from '#engine/knowledge/selector.ts'
import { lossesTo } from '#engine/preservation/losses.ts'
import type { Check } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/**
 * rule:inactivated. What a neighbour takes away from a preservative or another ingredient. A note; a warning where the
 * pair is known in numbers or by a test and most of the agent is gone.
 */
export const inactivated: Check = (context) =>
  context.lines.flatMap((line) =>
    line.subject.inactivatedBy.flatMap((relation) => {
      const takers = context.lines.filter(
        (other) =>
          other.subject.id !== line.subject.id &&
          other.share_percent >= (relation.min_percent ?? 0.5) &&
          matches(relation.with, other.subject),
      )
      const [taker] = takers
      if (!taker) return []
      const losses = lossesTo(context, line.subject, taker.subject)
      const { say } = context.world
      const [away, lost] = [nameOf(taker.subject), nameOf(line.subject)]
      const numbers = losses.map(({ text }) => text)
      const says = [...(relation.says ? [relation.says] : []), ...numbers].join('; ')
      return [
        {
          ...(losses.some(({ large }) => large) && { severity: 'warn' as const }),
          about: [line.subject.id, taker.subject.id].sort(),
          message: says ? say`${away} takes away part of ${lost}: ${says}` : say`${away} takes away part of ${lost}`,
          remedy: say`Count on less of it at work; a challenge test decides`,
          because: [
            because(relation.says || say`is inactivated by it`),
            because(say`${away} is present`),
            ...losses.flatMap((loss) => loss.because),
          ],
          sources: [...new Set([...sourcesOf(relation), ...losses.flatMap(({ sources }) => sources)])].sort(),
        },
      ]
    }),
  )
