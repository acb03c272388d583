import { write } from 'graphology-gexf'
import type { FlatGraph } from './export-graph.ts'
import { writeGraphml } from './write-graphml.ts'

export const GRAPH_FORMATS = ['json', 'gexf', 'graphml'] as const
export type GraphFormat = (typeof GRAPH_FORMATS)[number]

/** Nodes and edges as GEXF 1.2 that keeps to its schema: of the graph's own attributes it has room for three. */
const writeGexf = (graph: FlatGraph): string =>
  write(graph, {
    pedantic: true,
    pretty: false,
    formatNode: (_key, { label, ...attributes }) => ({ label: String(label ?? ''), attributes }),
    formatEdge: (_key, attributes) => ({ label: String(attributes['relation'] ?? ''), attributes }),
  })

const WRITERS: Record<GraphFormat, (graph: FlatGraph) => string> = {
  // graphology's own form: read back with graph.import()
  json: (graph) => `${JSON.stringify(graph.export())}\n`,
  gexf: writeGexf,
  graphml: writeGraphml,
}

/** A graph as text in one of the formats that other programs read. */
export const writeGraph = (graph: FlatGraph, format: GraphFormat): string => WRITERS[format](graph)
