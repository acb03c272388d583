import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { partnersFor } from './partners.ts'
import { GROUP_NAME, openGroups } from './covers.ts'
import { list } from './texts.ts'
import { cite } from './told.ts'
import type { Told } from './told.ts'
import { mustBePreserved } from './too-little.ts'
import { agentsHere } from './work.ts'

/** Organism groups that the agents leave open, with partners that would cover them. */
export function spectrumOpen(context: FormulaContext): Told[] {
  if (!mustBePreserved(context)) return []
  const open = openGroups(context)
  if (open.length === 0) return []
  const work = agentsHere(context)
  const partners = partnersFor(context, open)
  return [
    {
      about: work.map(({ subject }) => subject.id).sort(),
      message: `The preservatives leave ${list(open.map((group) => GROUP_NAME[group]))} weakly covered`,
      remedy: `Add a partner that covers them${partners ? ` (${partners})` : ''}; only a challenge test can tell`,
      because: work.flatMap(({ subject }) => {
        const claim = usedClaim(subject, 'spectrum')
        return claim ? [cite(`spectrum of ${nameOf(subject)}`, claim)] : []
      }),
      sources: work.flatMap(({ subject }) => usedClaim(subject, 'spectrum')?.source ?? []).sort(),
    },
  ]
}
