import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { partnersFor } from './partners.ts'
import { groupName, openGroups } from './covers.ts'
import { cite } from './told.ts'
import type { Told } from './told.ts'
import { mustBePreserved } from './too-little.ts'
import { agentsHere } from './work.ts'

/** Organism groups that the agents leave open, with partners that would cover them. */
export function spectrumOpen(context: FormulaContext): Told[] {
  if (!mustBePreserved(context)) return []
  const open = openGroups(context)
  if (open.length === 0) return []
  const { say } = context.world
  const work = agentsHere(context)
  const partners = partnersFor(context, open)
  return [
    {
      about: work.map(({ subject }) => subject.id).sort(),
      message: say`The preservatives leave ${say.list(
        open.map((group) => groupName(group, say)),
        'and',
      )} weakly covered`,
      remedy: partners
        ? say`Add a partner that covers them (${partners}); only a challenge test can tell`
        : say`Add a partner that covers them; only a challenge test can tell`,
      because: work.flatMap(({ subject }) => {
        const claim = usedClaim(subject, 'spectrum')
        return claim ? [cite(say`spectrum of ${nameOf(subject)}`, claim)] : []
      }),
      sources: work.flatMap(({ subject }) => usedClaim(subject, 'spectrum')?.source ?? []).sort(),
    },
  ]
}
