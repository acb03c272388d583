import type { Provenance } from '#engine/model/records.ts'
import type { Range } from '#engine/units/range.ts'
import { linksOf, nodeOf, statementOf } from './links.ts'
import type { Link, Node } from './links.ts'
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
const MOST_NODES = 150

export interface GraphQuery {
  /** id of an ingredient or alias, role:x, class:x or limit:x */
  around: string
  steps?: 1 | 2 | 3
  /** relations to follow; all but holds-with when left out */
  relations?: readonly RelationName[]
}

interface Edge extends Partial<Provenance> {
  id: string
  from: string
  to: string
  relation: string
  says?: string
  severity?: string
  ph?: Range | null
  heat_c?: Range | null
}

export interface GraphPart {
  nodes: Node[]
  edges: Edge[]
  /** more nodes lie around than are given */
  cut: boolean
}

const edgeOf = ({ key, from, to, attributes }: Link): Edge => ({
  id: key,
  from,
  to,
  relation: attributes.relation,
  ...statementOf(attributes),
})

/** The derived edges at one node: with whom it shares a window of pH or heat, and where that window is. */
function holdsWithEdges(world: World, start: string): Edge[] {
  const { nodes, between } = world.holdsWith
  if (!nodes.has(start)) return []
  return [...nodes.keys()]
    .filter((id) => id !== start)
    .sort()
    .flatMap((to) => {
      const { ph, heat_c } = between(start, to)
      if (ph === undefined && heat_c === undefined) return []
      const window = { ...(ph !== undefined && { ph }), ...(heat_c !== undefined && { heat_c }) }
      return [{ id: `${start}>holds-with>${to}`, from: start, to, relation: 'holds-with', ...window }]
    })
}

/** Breadth first, neighbours by id, until nothing is left or the drawing is full. */
function reach(start: string, steps: number, edgesAt: (node: string) => readonly Edge[]) {
  const reached = new Set([start])
  let ring = [start]
  for (let step = 0; step < steps; step++) {
    const next = new Set(ring.flatMap((node) => edgesAt(node).map(({ from, to }) => (from === node ? to : from))))
    ring = [...next].filter((node) => !reached.has(node)).sort()
    for (const node of ring.slice(0, MOST_NODES - reached.size)) reached.add(node)
    if (reached.size === MOST_NODES && ring.some((node) => !reached.has(node))) return { reached, cut: true }
  }
  return { reached, cut: false }
}

/**
 * The part of the graph around a node; null when there is no such node.
 * `holds-with` joins nearly everything to everything: it is followed from the middle only, and only when asked for.
 */
export function graphAround(world: World, { around, steps = 1, relations }: GraphQuery): GraphPart | null {
  const start = world.graph.hasNode(around) ? around : world.find(around)?.id
  if (start === undefined) return null
  const wanted = new Set<string>(relations ?? RELATIONS.filter((relation) => relation !== 'holds-with'))
  const memo = new Map<string, Edge[]>()
  const edgesAt = (node: string): Edge[] => {
    const known = memo.get(node)
    if (known) return known
    const stated = linksOf(world, node)
      .filter(({ attributes }) => wanted.has(attributes.relation))
      .map(edgeOf)
    const derived = node === start && wanted.has('holds-with') ? holdsWithEdges(world, node) : []
    memo.set(node, [...stated, ...derived])
    return [...stated, ...derived]
  }
  const { reached, cut } = reach(start, steps, edgesAt)
  const inside = [...reached]
    .flatMap(edgesAt)
    .filter(({ from, to }) => reached.has(from) && reached.has(to))
    .map((edge) => [edge.id, edge] as const)
  const edges = [...new Map(inside).values()].sort((a, b) => (a.id < b.id ? -1 : 1))
  return { nodes: [...reached].map((id) => nodeOf(world, id)), edges, cut }
}
