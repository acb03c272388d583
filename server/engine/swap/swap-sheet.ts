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

export interface SheetQuestion {
  formula: Formula
  wishes?: Wishes
  /** only these lines */
  lines?: readonly string[]
}

const STAND_INS_A_LINE = 3

/**
 * For every line: its role here, the best stand-ins with dose, whether it can be left out or not be replaced at all.
 * Line by line, so that a server can answer others in between.
 */
export function* swapSheetLines(world: World, { formula, wishes = {}, lines }: SheetQuestion): Generator<SheetLine> {
  const seen = new Set<string>()
  for (const { ingredient, inci, share_percent, roles } of checkFormula(world, formula).roles) {
    if (seen.has(ingredient) || lines?.includes(ingredient) === false) continue
    seen.add(ingredient)
    const reply = findSwaps(world, { formula, missing: [ingredient], wishes, limit: STAND_INS_A_LINE })
    yield {
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
  }
}

export const swapSheet = (world: World, question: SheetQuestion): SheetLine[] => [...swapSheetLines(world, question)]
