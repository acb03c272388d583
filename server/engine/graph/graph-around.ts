import { drawnNode } from './drawn-node.ts'
import type { DrawnNode } from './drawn-node.ts'
import { edgeOf } from './graph-edge.ts'
import type { GraphEdge } from './graph-edge.ts'
import { holdsWithEdge, holdsWithNodes } from './holds-with-edges.ts'
import { endsOf, linksOf } from './links.ts'
import type { Node } from './links.ts'
import { usualOf } from './reading.ts'
import type { World } from './world.ts'

/** Relations of graph-data/relations.yaml. */
export const RELATIONS = [
  'plays',
  'is-a',
  'broader',
  'confused-with',
  'made-of',
  'clashes-with',
  'needs',
  'boosted-by',
  'inactivated-by',
  'stands-in-for',
  'does-not-stand-in-for',
  'limited-by',
  'holds-with',
] as const
export type RelationName = (typeof RELATIONS)[number]

/** More than this no drawing bears. */
const USUAL_LIMIT = 150

export interface GraphQuery {
  /** id of an ingredient or alias, role:x, class:x or limit:x */
  around: string
  steps?: 1 | 2 | 3
  /** relations to follow; all but holds-with when left out */
  relations?: readonly RelationName[]
  /** nodes of a page, 150 when left out */
  limit?: number
  /** last node of the page before */
  after?: string
}

export interface GraphPart {
  nodes: DrawnNode[]
  /** edges that end at a node of this page and begin at one of this page or of an earlier one */
  edges: GraphEdge[]
  /** more nodes lie around than are given */
  cut: boolean
  /** node to go on after, null on the last page */
  next: string | null
  /** nodes of all pages */
  total: number
}

const KINDS: readonly Node['kind'][] = ['role', 'class', 'limit', 'ingredient']

/** Words before things, and what is on every shelf before what nobody has; ties by id. */
function readable(world: World, nodes: Iterable<string>): string[] {
  const kindOf = (node: string): number =>
    world.graph.hasNode(node) ? KINDS.indexOf(world.graph.getNodeAttribute(node, 'kind')) : KINDS.length
  return [...nodes]
    .map((node) => ({ node, kind: kindOf(node), usual: usualOf(world.knowledge, node) }))
    .sort((a, b) => a.kind - b.kind || b.usual - a.usual || (a.node < b.node ? -1 : 1))
    .map(({ node }) => node)
}

interface Walk {
  world: World
  start: string
  steps: number
  wanted: ReadonlySet<string>
}

/** Ends of the wanted links of a node; with whom it holds only from the middle, for that joins nearly all to all. */
function neighboursOf({ world, start, wanted }: Walk, node: string): string[] {
  const stated = endsOf(world, node, wanted)
  return node === start && wanted.has('holds-with') ? [...stated, ...holdsWithNodes(world, node)] : stated
}

/** Every node within reach, ring by ring. */
function reach(walk: Walk): string[] {
  const reached = new Set([walk.start])
  let ring = [walk.start]
  for (let step = 0; step < walk.steps && ring.length > 0; step++) {
    const next = new Set(ring.flatMap((node) => neighboursOf(walk, node)).filter((node) => !reached.has(node)))
    ring = readable(walk.world, next)
    for (const node of ring) reached.add(node)
  }
  return [...reached]
}

/** Edges between the nodes of a page and those of it and before. */
function edgesOn({ world, start, wanted }: Walk, page: readonly string[], given: ReadonlySet<string>): GraphEdge[] {
  const edges = new Map<string, GraphEdge>()
  for (const node of page) {
    for (const link of linksOf(world, node)) {
      const inside = given.has(link.from) && given.has(link.to)
      if (inside && wanted.has(link.attributes.relation)) edges.set(link.key, edgeOf(link))
    }
    const edge = wanted.has('holds-with') && node !== start ? holdsWithEdge(world, start, node) : null
    if (edge) edges.set(edge.id, edge)
  }
  return [...edges.values()].sort((a, b) => (a.id < b.id ? -1 : 1))
}

/**
 * A page of the part of the graph around a node; null when there is no such node, or none to go on after.
 * Pages follow the walk outwards, so that each can be drawn onto those before: together they hold every node and every
 * edge of the part once. `holds-with` joins nearly everything to everything: it is followed from the middle only, and
 * only when asked for.
 */
export function graphAround(world: World, query: GraphQuery): GraphPart | null {
  const { around, steps = 1, relations, limit = USUAL_LIMIT, after } = query
  const start = world.graph.hasNode(around) ? around : world.find(around)?.id
  if (start === undefined) return null
  const wanted = new Set<string>(relations ?? RELATIONS.filter((relation) => relation !== 'holds-with'))
  const walk = { world, start, steps, wanted }
  const order = reach(walk)
  const begin = after === undefined ? 0 : order.indexOf(after) + 1
  if (after !== undefined && begin === 0) return null
  const end = begin + limit
  const page = order.slice(begin, end)
  const cut = end < order.length
  return {
    nodes: page.map((id) => drawnNode(world, id)),
    edges: edgesOn(walk, page, new Set(order.slice(0, end))),
    cut,
    next: cut ? (page.at(-1) ?? null) : null,
    total: order.length,
  }
}
