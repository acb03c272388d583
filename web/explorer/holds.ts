import type { GraphEdge, GraphNode } from '#web/client/use-graph.ts'

interface Range {
  min?: number
  max?: number
}

/** At which pH and heat things are looked at; null: not asked. */
export interface Conditions {
  ph: number | null
  heat_c: number | null
}

/**
 * Whether something holds at the conditions. `unknown` is not `holds`: no window is on record. `none` says that nothing
 * was asked, or that the thing has no window of its own, as a role or a law.
 */
export type Holding = 'holds' | 'fails' | 'unknown' | 'none'

export type Reason = 'keeps-not' | 'works-not' | 'bears-not' | 'ph-unknown' | 'heat-unknown' | 'never-meet'

export interface Held {
  state: Holding
  why: Reason[]
}

const inside = (value: number, { min = -Infinity, max = Infinity }: Range): boolean => value >= min && value <= max

/** Fails where any reason says no, else unknown where any fact is missing. */
function heldBy(why: readonly Reason[]): Held {
  const against = why.filter((reason) => !reason.endsWith('unknown'))
  if (against.length > 0) return { state: 'fails', why: against }
  return { state: why.length > 0 ? 'unknown' : 'holds', why: [...why] }
}

const isAsked = ({ ph, heat_c }: Conditions): boolean => ph !== null || heat_c !== null

/** Whether an ingredient keeps, works and bears the heat at the conditions. */
export function nodeHeld({ kind, windows = {} }: Pick<GraphNode, 'kind' | 'windows'>, asked: Conditions): Held {
  if (kind !== 'ingredient' || !isAsked(asked)) return { state: 'none', why: [] }
  const { ph, heat_c } = asked
  const { ph_stability, ph_effective, heat_max_c } = windows
  const why: Reason[] = []
  if (ph !== null) {
    if (ph_stability && !inside(ph, ph_stability)) why.push('keeps-not')
    if (ph_effective && !inside(ph, ph_effective)) why.push('works-not')
    if (!ph_stability) why.push('ph-unknown')
  }
  if (heat_c !== null) {
    if (heat_max_c === undefined) why.push('heat-unknown')
    else if (heat_c > heat_max_c) why.push('bears-not')
  }
  return heldBy(why)
}

/** Whether both ends of an edge that has windows of its own (holds-with) hold; other edges have none. */
export function edgeHeld({ relation, ph, heat_c }: GraphEdge, asked: Conditions): Held {
  if (relation !== 'holds-with' || !isAsked(asked)) return { state: 'none', why: [] }
  const why: Reason[] = []
  if (asked.ph !== null) {
    if (ph === undefined) why.push('ph-unknown')
    else if (ph === null) why.push('never-meet')
    else if (!inside(asked.ph, ph)) why.push('keeps-not')
  }
  if (asked.heat_c !== null) {
    if (heat_c === undefined) why.push('heat-unknown')
    else if (heat_c === null) why.push('never-meet')
    else if (!inside(asked.heat_c, heat_c)) why.push('bears-not')
  }
  return heldBy(why)
}

const WORST: readonly Holding[] = ['none', 'holds', 'unknown', 'fails']

/** Two together: no better than the worse of them. */
export const together = (a: Held, b: Held): Held => {
  const state = WORST.indexOf(a.state) >= WORST.indexOf(b.state) ? a.state : b.state
  return { state, why: [...new Set([a, b].flatMap((one) => (one.state === state ? one.why : [])))] }
}
