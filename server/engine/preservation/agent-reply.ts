import type { FormulaContext } from '#engine/formula/context.ts'
import type { Agent, Taken } from '#engine/model/preservation.ts'
import { roundTo } from '#engine/units/round.ts'
import { micelleShare } from './losses.ts'
import { partsOfOils } from './oil-share.ts'
import type { SubstanceState } from './substance.ts'
import { windowPosition } from './window.ts'
import { agentsHere } from './work.ts'
import type { Work } from './work.ts'

interface Span {
  min: number
  max: number
}

/** Three digits are more than the constants bear, and enough for a level of parts in a million. */
const tidy = ({ min, max }: Span): Span => ({ min: Number(min.toPrecision(3)), max: Number(max.toPrecision(3)) })

/** Shares below this are not worth a line [%]. */
const LEAST_SHARE = 0.5

const byShare = (a: Taken, b: Taken): number =>
  b.share_percent - a.share_percent || ((a.ingredient ?? a.by) < (b.ingredient ?? b.by) ? -1 : 1)

function takenBy(state: SubstanceState): Taken[] {
  const { free, takers, ratio } = state
  if (!free) return []
  const oils = (ratio ? partsOfOils(ratio) : []).map(({ oil, part }) => ({
    by: 'oil' as const,
    share_percent: free.taken.oil * part,
    ingredient: oil,
  }))
  const micelles = takers.map((taker) => ({
    by: 'micelles' as const,
    share_percent: micelleShare(state, taker) ?? 0,
    ingredient: taker.surfactant.id,
  }))
  return [
    ...oils,
    ...micelles,
    { by: 'dissociation' as const, share_percent: free.taken.dissociation },
    { by: 'other' as const, share_percent: free.taken.undissolved },
  ]
    .filter(({ share_percent }) => share_percent >= LEAST_SHARE)
    .map((one) => ({ ...one, share_percent: roundTo(one.share_percent, 1) }))
    .sort(byShare)
}

function agentOf(state: SubstanceState, total_percent: number, context: FormulaContext, partOf?: string): Agent {
  const { free, subject } = state
  return {
    ingredient: subject.id,
    ...(partOf !== undefined && { partOf }),
    total_percent: roundTo(total_percent, 4),
    free_percent: free && tidy(free.free_percent),
    undissociated_percent: free?.undissociated_percent ? tidy(free.undissociated_percent) : null,
    window: windowPosition(subject, context.ph),
    takenBy: takenBy(state),
  }
}

/** Free level of a blend: the sum of its preserving parts, or null where one of them is not known. */
function freeOfBlend(substances: readonly SubstanceState[]): Span | null {
  const sum = { min: 0, max: 0 }
  for (const { free } of substances) {
    if (!free) return null
    sum.min += free.free_percent.min
    sum.max += free.free_percent.max
  }
  return substances.length === 0 ? null : tidy(sum)
}

function agentsOf({ subject, share_percent, substances }: Work, context: FormulaContext): Agent[] {
  const [only] = substances
  if (only && substances.length === 1 && only.subject.id === subject.id) return [agentOf(only, share_percent, context)]
  const whole: Agent = {
    ingredient: subject.id,
    total_percent: roundTo(share_percent, 4),
    free_percent: freeOfBlend(substances),
    undissociated_percent: null,
    window: windowPosition(subject, context.ph),
    takenBy: [],
  }
  const parts = substances.map((state) => {
    const share = subject.parts.find((part) => part.subject.id === state.subject.id)?.share ?? 0
    return agentOf(state, share_percent * share, context, subject.id)
  })
  return [whole, ...parts]
}

/** Agents of the formula; a blend first as a whole, then the preserving substances in it. By id. */
export const agentReplies = (context: FormulaContext): Agent[] =>
  agentsHere(context).flatMap((work) => agentsOf(work, context))
