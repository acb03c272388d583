import type { World } from '#engine/graph/world.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Swap, SwapsReply, Wishes } from '#engine/model/swap.ts'
import { checkFormula } from '#engine/checks/report.ts'
import { findSwaps } from './find-swaps.ts'

export interface SheetLine {
  ingredient: string
  inci: string
  share_percent: number
  roles: { role: string; label: string }[]
  outcome: SwapsReply['outcome']
  why: string
  standIns: Swap[]
  leaveOut: SwapsReply['leaveOut']
  irreplaceable: boolean
}

const STAND_INS_A_LINE = 3

/** For every line: its role here, the best stand-ins with dose, whether it can be left out or not be replaced at all. */
export function swapSheet(world: World, { formula, wishes = {} }: { formula: Formula; wishes?: Wishes }): SheetLine[] {
  const seen = new Set<string>()
  const lines = checkFormula(world, formula).roles.filter(
    ({ ingredient }) => !seen.has(ingredient) && seen.add(ingredient),
  )
  return lines.map(({ ingredient, inci, share_percent, roles }) => {
    const reply = findSwaps(world, { formula, missing: [ingredient], wishes, limit: STAND_INS_A_LINE })
    return {
      ingredient,
      inci,
      share_percent,
      roles,
      outcome: reply.outcome,
      why: reply.why,
      standIns: reply.swaps,
      leaveOut: reply.leaveOut,
      irreplaceable: reply.outcome === 'no-safe-swap',
    }
  })
}
