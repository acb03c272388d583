import { drawnNode } from './drawn-node.ts'
import type { DrawnNode } from './drawn-node.ts'
import { RELATIONS } from './graph-around.ts'
import type { RelationName } from './graph-around.ts'
import { placesOf } from './places.ts'
import type { Place } from './places.ts'
import type { World } from './world.ts'

export interface WholeGraph {
  relations: RelationName[]
  /** roles first, then what has most edges: the first so many make a drawing of their own */
  nodes: (DrawnNode & Place)[]
  /** from and to as places in the list of nodes, relation as place in the list of relations; each once */
  edges: [from: number, to: number, relation: number][]
}

/** Worked out when first asked for; a world does not change. */
const made = new WeakMap<World, WholeGraph>()

function nodesOf(world: World): WholeGraph['nodes'] {
  const places = placesOf(world)
  const isWord = ({ kind }: DrawnNode): number => (kind === 'role' ? 0 : 1)
  return world.graph
    .mapNodes((id) => drawnNode(world, id))
    .sort((a, b) => isWord(a) - isWord(b) || b.links - a.links || (a.id < b.id ? -1 : 1))
    .map((node) => ({ ...node, ...(places.get(node.id) ?? { x: 0, y: 0 }) }))
}

function edgesOf({ graph }: World, nodes: WholeGraph['nodes'], relations: readonly string[]): WholeGraph['edges'] {
  const at = new Map(nodes.map(({ id }, index) => [id, index]))
  const seen = new Map<string, [number, number, number]>()
  graph.forEachEdge((_key, { relation }, from, to) => {
    const edge: [number, number, number] = [at.get(from) ?? -1, at.get(to) ?? -1, relations.indexOf(relation)]
    if (!edge.includes(-1)) seen.set(edge.join(), edge)
  })
  return [...seen.values()].sort((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2])
}

/**
 * Every node with its place in the drawing, and which are joined by what: small enough to be sent at once. What an edge
 * says and where that comes from is asked of the part around a node. `holds-with`, which joins nearly all to all, is
 * left to the windows that stand on the nodes.
 */
export function wholeGraph(world: World): WholeGraph {
  const known = made.get(world)
  if (known) return known
  const relations = RELATIONS.filter((relation) => relation !== 'holds-with')
  const nodes = nodesOf(world)
  const whole = { relations, nodes, edges: edgesOf(world, nodes, relations) }
  made.set(world, whole)
  return whole
}
