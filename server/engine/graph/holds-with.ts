import { UndirectedGraph } from 'graphology'
import { overlap, rangeText } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import { rangeOfProperty } from './subject.ts'
import type { Subject } from './subject.ts'

/**
 * Where both ends of a pair hold. Ingredients with the same window share a node (2,000 ingredients have some hundred
 * different windows), so an edge between two windows is the compatibility edge of every pair of ingredients in them.
 */
export interface HoldsWith {
  graph: UndirectedGraph<{ window: Range }, { both: Range | null }>
  /** ingredient id → node of its pH window and of its heat window */
  nodes: ReadonlyMap<string, { ph?: string; heat?: string }>
  /** pH range and temperature range [C] in which both keep: null where the windows do not meet, undefined where an end states none */
  between(a: string, b: string): { ph: Range | null | undefined; heat_c: Range | null | undefined }
}

type Graph = HoldsWith['graph']

function addWindow(graph: Graph, kind: 'ph' | 'heat', window: Range): string {
  const key = `${kind} ${rangeText(window)}`
  if (graph.hasNode(key)) return key
  const others = graph.filterNodes((node) => node.startsWith(kind))
  graph.addNode(key, { window })
  for (const other of others)
    graph.addEdge(key, other, { both: overlap(window, graph.getNodeAttribute(other, 'window')) })
  return key
}

export function buildHoldsWith(subjects: readonly Subject[]): HoldsWith {
  const graph: Graph = new UndirectedGraph()
  const nodes = new Map<string, { ph?: string; heat?: string }>()
  for (const subject of subjects) {
    const ph = rangeOfProperty(subject, 'ph_stability')
    const max = rangeOfProperty(subject, 'heat_max_c')?.max
    if (!ph && max === undefined) continue
    nodes.set(subject.id, {
      ...(ph && { ph: addWindow(graph, 'ph', ph) }),
      ...(max !== undefined && { heat: addWindow(graph, 'heat', { max }) }),
    })
  }
  const both = (a: string | undefined, b: string | undefined): Range | null | undefined => {
    if (a === undefined || b === undefined) return undefined
    return a === b ? graph.getNodeAttribute(a, 'window') : graph.getEdgeAttribute(a, b, 'both')
  }
  return {
    graph,
    nodes,
    between: (a, b) => ({
      ph: both(nodes.get(a)?.ph, nodes.get(b)?.ph),
      heat_c: both(nodes.get(a)?.heat, nodes.get(b)?.heat),
    }),
  }
}
