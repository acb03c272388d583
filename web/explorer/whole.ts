import type { GraphNode, WholeGraph } from '#web/client/use-graph.ts'
import { nodeHeld } from './holds.ts'
import type { Conditions } from './holds.ts'
import { nodeName } from './names.ts'
import type { Relation } from './relations.ts'
import type { Scene, SceneEdge } from './scene.ts'
import { shortLabel } from './scene-of-tree.ts'

export type WholeNode = WholeGraph['nodes'][number]

/** The part of the whole graph that is shown: the first so many nodes and what joins them by the relations that are on. */
export interface Selection {
  nodes: WholeNode[]
  edges: { from: WholeNode; to: WholeNode; relation: string }[]
  /** shown edges at each node */
  degree: ReadonlyMap<string, number>
}

export function selectWhole(whole: WholeGraph, size: number, relations: readonly Relation[]): Selection {
  const nodes = size === 0 ? whole.nodes : whole.nodes.slice(0, size)
  const degree = new Map<string, number>()
  const edges = whole.edges.flatMap(([a = -1, b = -1, kind = -1]) => {
    const [from, to, relation] = [nodes[a], nodes[b], whole.relations[kind]]
    if (!from || !to || relation === undefined || !relations.some((one) => one === relation)) return []
    for (const { id } of from === to ? [from] : [from, to]) degree.set(id, (degree.get(id) ?? 0) + 1)
    return [{ from, to, relation }]
  })
  return { nodes, edges, degree }
}

const LEAST_PX = 3
const MOST_PX = 13
const LABELS_FROM_PX = 4
/** Side of the square that a mark has to itself where it is drawn at full size [px]. */
const ROOM_PX = 32

/** Marks grow with the root of what joins them, so that a hub does not cover its district. */
export const markSize = (degree: number): number => Math.min(MOST_PX, LEAST_PX + Math.sqrt(degree) * 0.55)

interface Size {
  width_px: number
  height_px: number
}

/** The whole graph as a drawing, at the places that are stored for it; marks shrink where many stand in little room. */
export function sceneOfWhole({ nodes, edges, degree }: Selection, asked: Conditions, size: Size): Scene {
  const { width_px, height_px } = size
  const shrink = Math.min(1, Math.sqrt((width_px * height_px) / Math.max(1, nodes.length)) / ROOM_PX)
  const holding = new Map(nodes.map((node) => [node.id, nodeHeld(node, asked).state]))
  return {
    nodes: nodes.map((node) => ({
      key: node.id,
      shape: node.kind,
      x: node.x,
      y: -node.y,
      size: markSize(degree.get(node.id) ?? 0) * shrink,
      label: shortLabel(nodeName(node)),
      side: 'right',
      holding: holding.get(node.id) ?? 'none',
      isOnWay: false,
      isOpen: false,
    })),
    edges: edges.map(({ from, to, relation }): SceneEdge => {
      const states = [holding.get(from.id), holding.get(to.id)]
      const state = states.includes('fails') ? 'fails' : states.includes('unknown') ? 'unknown' : 'none'
      const key = `${from.id}>${relation}>${to.id}`
      return { key, from: from.id, to: to.id, relation, holding: state, isOnWay: false, isAgain: false }
    }),
    isTrueSize: false,
    labelsFrom_px: LABELS_FROM_PX * shrink,
    height_px,
  }
}

/** Nodes of one kind that fit a text, by name. */
export function listOf(nodes: readonly WholeNode[], kind: GraphNode['kind'], words: string): WholeNode[] {
  const sought = words.trim().toLowerCase()
  return nodes
    .filter((node) => node.kind === kind && (sought === '' || nodeName(node).toLowerCase().includes(sought)))
    .sort((a, b) => (nodeName(a) < nodeName(b) ? -1 : 1))
}
