import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import type { Say } from '#engine/words/say.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Taker } from './micelles.ts'
import { citedIn } from './oil-share.ts'
import type { SubstanceState } from './substance.ts'
import { shareText, spanText } from './texts.ts'
import { cite, listed, seenAs } from './told.ts'
import type { Told } from './told.ts'
import { agentsHere, preservingWork } from './work.ts'
import { phasesOf } from './phases.ts'

/** Share of the total that one surfactant holds in its micelles [%], where the constant of the pair is known. */
export function micelleShare({ free, takers }: SubstanceState, { total_to_free }: Taker): number | null {
  if (!free || total_to_free === undefined) return null
  const all = takers.reduce((sum, { total_to_free: one = 1 }) => sum + one - 1, 0)
  return all === 0 ? 0 : (free.taken.micelles * (total_to_free - 1)) / all
}

export interface Loss {
  text: string
  because: Told['because']
  sources: string[]
  /** more than half of it, or a test of the pair that ended in a loss */
  large: boolean
}

const HALF_PERCENT = 50

const OUTCOME: Record<string, (say: Say) => string> = {
  lost: (say) => say`a test of the pair ended in full loss`,
  'partly lost': (say) => say`a test of the pair ended in partial loss`,
  'less affected': (say) => say`tests found it less affected than parabens`,
  kept: (say) => say`a test of the pair at this level found no loss`,
}

const outcomeText = (outcome: string, say: Say): string => OUTCOME[outcome]?.(say) ?? outcome

/** What is known in numbers of one surfactant taking one substance; null where nothing is. */
export function lossOf(state: SubstanceState, taker: Taker, say: Say): Loss | null {
  const share = micelleShare(state, taker)
  const { outcome, rows } = taker
  if (share === null && outcome === undefined) return null
  const name = say.inside(nameOf(state.subject))
  const texts = [
    ...(share === null ? [] : [say`about ${shareText(share / 100, say)} of the ${name} sits in its micelles`]),
    ...(outcome === undefined ? [] : [outcomeText(outcome, say)]),
  ]
  return {
    text: texts.join('; '),
    because: rows.map((row) =>
      cite(
        row.binding_per_percent === null
          ? `${OUTCOME[row.outcome ?? '']?.(say) ?? say`tested`} (${row.source}, ${row.locator}${seenAs(row, say)})`
          : say`total over free grows by ${row.binding_per_percent} for each % (${row.source}, ${row.locator}${seenAs(row, say)})`,
        row,
      ),
    ),
    sources: listed(rows),
    large: (share ?? 0) >= HALF_PERCENT || outcome === 'lost',
  }
}

/** Losses of an ingredient (or of the preserving parts of it) to one surfactant of the formula. */
export function lossesTo(context: FormulaContext, agent: Subject, taker: Subject): Loss[] {
  const here = preservingWork(context).find(({ subject }) => subject.id === agent.id)
  return (here?.substances ?? []).flatMap((state) => {
    const found = state.takers.find(({ surfactant }) => surfactant.id === taker.id)
    const loss = found && lossOf(state, found, context.world.say)
    return loss ? [loss] : []
  })
}

function drawn(agent: Subject, state: SubstanceState, context: FormulaContext): Told[] {
  const { free, ratio } = state
  if (!free || !ratio || free.taken.oil < HALF_PERCENT) return []
  const { oils, oil_to_water } = phasesOf(context)
  const [most] = [...oils].sort((a, b) => b.percent - a.percent || (a.subject.id < b.subject.id ? -1 : 1))
  const { say } = context.world
  const name = say.inside(nameOf(state.subject))
  const [low, high] = [ratio.min, ratio.max].map((one) => say.figure(one.toPrecision(2)))
  const between = ratio.min === ratio.max ? (low ?? '') : say`${low ?? ''} to ${high ?? ''}`
  return [
    {
      about: [...new Set([agent.id, ...(most ? [most.subject.id] : [])])].sort(),
      message: say`About ${shareText(free.taken.oil / 100, say)} of the ${name} is drawn into the oil; ${spanText(free.free_percent, say)} of the water phase stays free`,
      remedy: say`Count on what stays in the water: less or another oil, or an agent that keeps to the water; a challenge test decides`,
      because: [
        {
          fact: ratio.rough ? say`oil over water ${between}, worked out from log P` : say`oil over water ${between}`,
        },
        { fact: say`${say.figure(oil_to_water.toPrecision(2))} parts of oil for one of water phase` },
        ...citedIn(ratio).map((row) =>
          cite(`${row.source}, ${row.locator || say`no locator`}${seenAs(row, say)}`, row),
        ),
      ],
      sources: listed(citedIn(ratio)),
    },
  ]
}

/** Agents of which more than half goes into the oil. */
export const drawnIntoOil = (context: FormulaContext): Told[] =>
  (context.water_percent < 1 ? [] : agentsHere(context)).flatMap(({ subject, substances }) =>
    substances.flatMap((state) => drawn(subject, state, context)),
  )
