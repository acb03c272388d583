import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { InPhase } from './phases.ts'
import { figuresOf } from './tables.ts'
import type { Cited, Figures, PartitionRow } from './tables.ts'

/** Oil over water of one agent in one oil phase. */
export interface OilRatio {
  min: number
  max: number
  /** no ratio was measured for this agent: worked out from log P */
  rough: boolean
  cited: readonly Cited[]
}

export interface MixedOilRatio {
  min: number
  max: number
  rough: boolean
  /** each oil with its ratio and its part of the oil phase [%] */
  oils: readonly { oil: Subject; percent: number; ratio: OilRatio }[]
}

interface Span {
  min: number
  max: number
}

type Kind = 'triglyceride' | 'hydrocarbon' | 'ester' | 'lanolin'

function kindOf({ id, classes }: Subject): Kind | null {
  if (id === 'lanolin') return 'lanolin'
  if (classes.has('triglyceride')) return 'triglyceride'
  if (classes.has('hydrocarbon')) return 'hydrocarbon'
  if (classes.has('fatty-ester') || classes.has('carbonate-ester')) return 'ester'
  return null
}

const spanOf = (rows: readonly PartitionRow[]): Span => ({
  min: Math.min(...rows.map(({ ratio }) => ratio.min)),
  max: Math.max(...rows.map(({ ratio }) => ratio.max)),
})

/** Beyond what the table itself spreads. */
const MARGIN = 2

/** Ratio in a kind of oil over that in octanol, least and most among all agents of the table, with a margin. */
function octanolFactors(figures: Figures): ReadonlyMap<string, Span> {
  const spans = new Map<string, Span>()
  for (const [agent, rows] of figures.partitions) {
    const octanol = figures.logP.get(agent)
    if (!octanol) continue
    for (const { kind, ratio } of rows) {
      const known = spans.get(kind) ?? { min: Infinity, max: 0 }
      const p = 10 ** octanol.log_p
      spans.set(kind, { min: Math.min(known.min, ratio.min / p), max: Math.max(known.max, ratio.max / p) })
    }
  }
  return new Map([...spans].map(([kind, { min, max }]) => [kind, { min: min / MARGIN, max: max * MARGIN }]))
}

const factors = new WeakMap<Figures, ReadonlyMap<string, Span>>()

function factorsOf(figures: Figures): ReadonlyMap<string, Span> {
  const known = factors.get(figures)
  if (known) return known
  const made = octanolFactors(figures)
  factors.set(figures, made)
  return made
}

type OneOil = OilRatio | null

/**
 * Ratio in one oil: measured in that oil, else in oils of its kind, else worked out from log P and how the oils of the
 * kind compare with octanol. Silicones, waxes and fatty alcohols have no rows: from nothing up to a fatty oil.
 */
function ratioInOil(agent: Subject, oil: Subject, figures: Figures): OneOil {
  const rows = figures.partitions.get(agent.id) ?? []
  const own = rows.filter((row) => row.oil === oil.id)
  if (own.length > 0) return { ...spanOf(own), rough: false, cited: own }
  const kind = kindOf(oil)
  const like = rows.filter((row) => row.kind === (kind ?? 'triglyceride'))
  if (like.length > 0) return { ...spanOf(like), ...(kind === null && { min: 0 }), rough: kind === null, cited: like }
  const octanol = figures.logP.get(agent.id)
  const factor = factorsOf(figures).get(kind ?? 'triglyceride')
  if (!octanol || !factor) return null
  const p = 10 ** octanol.log_p
  return { min: kind === null ? 0 : factor.min * p, max: factor.max * p, rough: true, cited: [octanol] }
}

/** Records and tables do not change; each pair is looked up once. */
const memo = new WeakMap<Subject, WeakMap<Subject, { found: OneOil }>>()

function ratioOnce(agent: Subject, oil: Subject, world: World): OneOil {
  const known = memo.get(agent) ?? new WeakMap<Subject, { found: OneOil }>()
  memo.set(agent, known)
  const one = known.get(oil)
  if (one) return one.found
  const found = ratioInOil(agent, oil, figuresOf(world))
  known.set(oil, { found })
  return found
}

/**
 * Oil over water of an agent in a mixed oil phase: each oil takes its part as if it were alone.
 * Null where one of the oils has no ratio for this agent; without oil the ratio does not matter and is 0.
 */
export function oilRatioOf(agent: Subject, oils: readonly InPhase[], world: World): MixedOilRatio | null {
  const mixed = { min: 0, max: 0, rough: false, oils: [] as { oil: Subject; percent: number; ratio: OilRatio }[] }
  for (const { subject, percent } of oils) {
    const ratio = ratioOnce(agent, subject, world)
    if (!ratio) return null
    mixed.min += (ratio.min * percent) / 100
    mixed.max += (ratio.max * percent) / 100
    mixed.rough ||= ratio.rough
    mixed.oils.push({ oil: subject, percent, ratio })
  }
  return mixed
}

/** Figures behind a mixed ratio, each once, by id. */
export const citedIn = ({ oils }: MixedOilRatio): Cited[] =>
  [...new Map(oils.flatMap(({ ratio }) => ratio.cited.map((row) => [row.id, row] as const))).values()].sort((a, b) =>
    a.id < b.id ? -1 : 1,
  )

/** Oils by id with their part of what the oil phase takes, 0 to 1. */
export function partsOfOils({ oils }: MixedOilRatio): { oil: string; part: number }[] {
  const weights = oils.map(({ oil, percent, ratio }) => ({ oil: oil.id, weight: (ratio.min + ratio.max) * percent }))
  const all = weights.reduce((sum, { weight }) => sum + weight, 0)
  return all > 0 ? weights.map(({ oil, weight }) => ({ oil, part: weight / all })) : []
}
