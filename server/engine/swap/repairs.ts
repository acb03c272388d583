import { commonPh } from '#engine/checks/report.ts'
import { heatAsked } from '#engine/checks/heat-too-low.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { rebalance, takesUpDifference } from '#engine/dose/rebalance.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Change, Wishes } from '#engine/model/swap.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import { wishUnmet } from './wishes.ts'

/** A change to the formula beside the swap itself, with what it takes off the rank. */
export interface Repair {
  formula: Formula
  change: Change
  cost: number
}

/** @param out ids that cannot be had: no repair brings them back */
export type RepairKind = (
  after: FormulaContext,
  forbidden: readonly Finding[],
  wishes: Wishes,
  out: ReadonlySet<string>,
) => Repair | null

const PH_RULES = new Set(['ph-keeps', 'ph-works', 'preservative-window', 'law-ph'])
/** Farther than this a formula is another formula. */
const PH_REACH = 1.5

/** Moves the pH into the window that every line of the new formula accepts, when that is near. */
const movePh: RepairKind = (after, forbidden, wishes) => {
  if (wishes.keepPh || after.ph === null || !forbidden.some(({ rule }) => PH_RULES.has(rule))) return null
  const common = commonPh(after)
  if (!common) return null
  const target = Math.min(common.max ?? 14, Math.max(common.min ?? 0, after.ph))
  const ph = roundTo(target, 1) > (common.max ?? 14) ? Math.floor(target * 10) / 10 : roundTo(target, 1)
  const way = Math.abs(ph - after.ph)
  if (way === 0 || way > PH_REACH) return null
  const { say } = after.world
  return {
    formula: { ...after.formula, ph },
    change: {
      kind: 'ph',
      text: say`Bring the pH from ${say.short(after.ph)} to ${say.short(ph)} in small steps, by the meter`,
      from: after.ph,
      to: ph,
      unit: 'pH',
    },
    cost: 0.05 + 0.08 * way,
  }
}

const COLD_PROCESS_C = 50
const HEAT_REACH_C = 20

/** Heats the phase until the stand-in melts, when all others bear it and the process is hot anyway. */
const heatMore: RepairKind = (after, forbidden, wishes) => {
  const { hottest_c } = after
  if (hottest_c === null || hottest_c <= COLD_PROCESS_C || !forbidden.some(({ rule }) => rule === 'heat-too-low'))
    return null
  const asked_c = Math.max(
    ...after.lines.map((line) => (line.phase === 'cool-down' ? 0 : (heatAsked(line)?.asked_c ?? 0))),
  )
  const bearsIt = after.lines.every(
    ({ subject, phase }) =>
      phase === 'cool-down' || (rangeOfProperty(subject, 'heat_max_c')?.max ?? Infinity) >= asked_c,
  )
  if (!bearsIt || asked_c > hottest_c + HEAT_REACH_C || asked_c > (wishes.hottest_c ?? Infinity)) return null
  return {
    formula: { ...after.formula, hottest_c: asked_c },
    change: {
      kind: 'heat',
      text: after.world.say`Heat the phase to ${asked_c} °C instead of ${hottest_c} °C, until everything is clear`,
      from: hottest_c,
      to: asked_c,
      unit: 'C',
    },
    cost: 0.02 + 0.004 * (asked_c - hottest_c),
  }
}

/** Dose of a companion per mass of what needs it, by kind of need. Starting points for the pH meter, no recipe. */
const COMPANION: Record<string, { id: string; ratio: number; text: (say: Say) => string }> = {
  neutraliser: {
    id: 'sodium-hydroxide',
    ratio: 0.4,
    text: (say) => say`a neutraliser, in small steps by the pH meter; gloves and goggles`,
  },
  acid: { id: 'lactic-acid', ratio: 0.3, text: (say) => say`an acid, in small steps by the pH meter` },
}

/** A name in the middle of a sentence. */
function inside(id: string, { world }: FormulaContext): string {
  const subject = world.find(id)
  return world.say.inside(subject ? nameOf(subject) : id)
}

function mayAdd(id: string, { world }: FormulaContext, wishes: Wishes): boolean {
  const subject = world.find(id)
  return subject !== null && wishUnmet(subject, wishes, NOTHING) === null
}

const NOTHING: ReadonlySet<string> = new Set()

/** Adds the partner without which a stand-in does nothing (a neutraliser, an acid). */
const addCompanion: RepairKind = (after, forbidden, wishes, out) => {
  for (const { rule, about } of forbidden) {
    if (rule !== 'need-missing') continue
    const line = after.lines.find(({ subject }) => about.includes(subject.id))
    const need = line?.subject.needs.find(({ need: kind }) => COMPANION[kind])
    const companion = need && COMPANION[need.need]
    if (!line || !companion || out.has(companion.id) || !mayAdd(companion.id, after, wishes)) continue
    const share_percent = roundTo(line.share_percent * companion.ratio, 3)
    const lines = [...after.formula.lines, { ingredient: companion.id, share_percent, phase: 'water' as const }]
    const filler = takesUpDifference(after, new Set([line.subject.id, companion.id]))
    return {
      formula: { ...after.formula, lines: rebalance(lines, filler, new Set([line.subject.id, companion.id])) },
      change: {
        kind: 'add',
        text: after.world
          .say`Add about ${after.world.say.short(share_percent)} % ${inside(companion.id, after)}: ${companion.text(after.world.say)}`,
        ingredient: companion.id,
        to: share_percent,
        unit: '%',
      },
      cost: 0.06,
    }
  }
  return null
}

/** Takes out a neutraliser whose polymer or fatty acid is gone. */
const removeIdleBase: RepairKind = (after, forbidden) => {
  const idle = forbidden.find(({ rule }) => rule === 'base-without-partner')?.about[0]
  if (idle === undefined) return null
  const lines = after.formula.lines.filter((line) => line.ingredient !== idle)
  const filler = takesUpDifference(after, new Set([idle]))
  return {
    formula: { ...after.formula, lines: rebalance(lines, filler, new Set()) },
    change: {
      kind: 'remove',
      text: after.world.say`Leave out the ${inside(idle, after)}: there is nothing left for it to neutralise`,
      ingredient: idle,
    },
    cost: 0.02,
  }
}

export const REPAIRS: readonly RepairKind[] = [addCompanion, removeIdleBase, heatMore, movePh]
