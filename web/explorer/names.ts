import type { GraphNode } from '#web/client/use-graph.ts'
import { plainLabel, readable } from '#web/client/use-labels.ts'
import type { Held } from './holds.ts'
import type { Conditions } from './holds.ts'
import type { Direction } from './relations.ts'
import { rangeText, upTo } from '#web/format/number.ts'
import { text } from '#web/text/text.ts'
import { explorer as T } from '#web/text/explorer.ts'

/** The name of a node as a person reads it. */
export const nodeName = ({ kind, label }: Pick<GraphNode, 'kind' | 'label'>): string =>
  kind === 'ingredient' ? readable(label) : kind === 'class' ? plainLabel(label) : label

/** A relation in words, read from one end. */
export function relationWords(relation: string, direction: Direction): string {
  const [out, back] = T.relations[relation] ?? text.ingredient.relations[relation] ?? [relation, relation]
  return direction === 'in' ? back : out
}

/** Address of the page about a node; null where there is none. */
export function recordHref({ id, kind }: Pick<GraphNode, 'id' | 'kind'>): string | null {
  if (kind === 'ingredient') return `/ingredient/${id}`
  if (kind === 'role') return `/role/${id.slice('role:'.length)}`
  return kind === 'class' ? `/ingredients?class=${id.slice('class:'.length)}` : null
}

/** Windows of a node, each in words. */
export function windowWords({ windows = {} }: Pick<GraphNode, 'windows'>): string[] {
  const { ph_stability, ph_effective, heat_max_c } = windows
  return [
    ...(ph_stability ? [T.windows.keeps(rangeText(ph_stability))] : []),
    ...(ph_effective ? [T.windows.works(rangeText(ph_effective))] : []),
    ...(heat_max_c === undefined ? [] : [T.windows.bears(upTo(heat_max_c, 1))]),
  ]
}

/** Whether something holds at what was asked, in words; empty where nothing was asked or it has no window of its own. */
export function heldWords({ state, why }: Held, { ph, heat_c }: Conditions): string {
  if (state === 'none') return ''
  if (state === 'holds') return T.holding.holds
  const reasons = why.map((reason) => T.reasons[reason]?.(ph, heat_c) ?? reason)
  return `${T.holding[state]}: ${reasons.join('; ')}`
}
