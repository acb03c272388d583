import { wayFrom, wayText } from './address.ts'
import type { WayStep } from './address.ts'
import { isRelation, RELATIONS, USUAL } from './relations.ts'
import type { Relation } from './relations.ts'

export const VIEWS = ['drawing', 'table', 'outline'] as const
export type View = (typeof VIEWS)[number]

/** How many nodes of the whole graph are shown; 0: all. */
export const WHOLE_SIZES = [500, 1000, 0] as const

/** All that a link to the explorer carries. */
export interface ExplorerState {
  view: View
  /** node in the middle */
  at: string | null
  /** the way that a swap took */
  way: WayStep[]
  /** nodes that are opened beside the one in the middle */
  open: string[]
  /** groups that are shown to their end, by their key */
  full: string[]
  relations: Relation[]
  ph: number | null
  heat_c: number | null
  /** size of the whole graph as shown; null: a neighbourhood is shown */
  whole: number | null
}

export const PH = { min: 0, max: 14, step: 0.1, usual: 5.5 } as const
export const HEAT_C = { min: 20, max: 200, step: 1, usual: 75 } as const

/** Most nodes that a link may open: each is a question to the server. */
const MOST_OPEN = 30

const listOf = (words: string | null): string[] => [...new Set((words ?? '').split(',').filter((word) => word !== ''))]

function numberIn(words: string | null, { min, max }: { min: number; max: number }): number | null {
  const value = words === null || words.trim() === '' ? NaN : Number(words)
  return value >= min && value <= max ? value : null
}

function relationsFrom(words: string | null): Relation[] {
  if (words === null) return [...USUAL]
  const asked = listOf(words)
  return RELATIONS.filter((relation) => asked.some((word) => isRelation(word) && word === relation))
}

function wholeFrom(words: string | null): number | null {
  if (words === 'all') return 0
  return WHOLE_SIZES.find((size) => size !== 0 && String(size) === words) ?? null
}

/** What an address asks for; what it says wrongly is left out. */
export function fromQuery(query: URLSearchParams): ExplorerState {
  const view = VIEWS.find((one) => one === query.get('view')) ?? 'drawing'
  return {
    view,
    at: query.get('at') || null,
    way: wayFrom(query.get('path')),
    open: listOf(query.get('open')).slice(0, MOST_OPEN),
    full: listOf(query.get('full')),
    relations: relationsFrom(query.get('relations')),
    ph: numberIn(query.get('ph'), PH),
    heat_c: numberIn(query.get('heat'), HEAT_C),
    whole: wholeFrom(query.get('whole')),
  }
}

/** The address of a state: only what differs from the usual. */
export function toQuery(state: ExplorerState): URLSearchParams {
  const { view, at, way, open, full, relations, ph, heat_c, whole } = state
  const isUsual = relations.length === USUAL.length && USUAL.every((relation) => relations.includes(relation))
  const pairs: [string, string][] = [
    ['at', at ?? ''],
    ['path', wayText(way)],
    ['whole', whole === null ? '' : whole === 0 ? 'all' : String(whole)],
    ['view', view === 'drawing' ? '' : view],
    ['open', open.join(',')],
    ['full', full.join(',')],
    ['ph', ph === null ? '' : String(ph)],
    ['heat', heat_c === null ? '' : String(heat_c)],
  ]
  const query = new URLSearchParams(pairs.filter(([, value]) => value !== ''))
  if (!isUsual) query.set('relations', relations.join(','))
  return query
}

/** The first node of what is shown, whether a way or a neighbourhood. */
export const rootOf = ({ at, way }: ExplorerState): string | null => way[0]?.from ?? at

/** Nodes whose neighbours are shown: the one in the middle of a neighbourhood is always open. */
export const openNodes = ({ at, way, open }: ExplorerState): string[] =>
  way.length > 0 || at === null ? [...open] : [...new Set([at, ...open])]

export const toggled = <T extends string>(list: readonly T[], one: T): T[] =>
  list.includes(one) ? list.filter((other) => other !== one) : [...list, one]
