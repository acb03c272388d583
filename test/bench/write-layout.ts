/**
 * Works out where each node stands in the drawing of the whole graph and writes it to graph-data/tables/graph-layout.tsv:
 * `npm run layout`. No chance and no clock: the same graph gives the same table. To be run again when so much was added
 * that the drawing shows it; until then new nodes stand beside their neighbours (engine/graph/places.ts).
 */
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { UndirectedGraph } from 'graphology'
import forceAtlas2 from 'graphology-layout-forceatlas2'
import { realWorld } from '../helpers.ts'

const TABLE = fileURLToPath(new URL('../../graph-data/tables/graph-layout.tsv', import.meta.url))
const ITERATIONS = 800
/** Half the width of the drawing, in the units of the table. */
const REACH = 10_000
/** Angle between one start and the next that never repeats [rad]. */
const GOLDEN = Math.PI * (3 - Math.sqrt(5))

/** How strongly a relation pulls its ends together: jobs and stand-ins make the districts, kinds only hint at them. */
const PULL: Readonly<Record<string, number>> = {
  broader: 3,
  plays: 1.5,
  'stands-in-for': 1,
  'made-of': 1,
  'limited-by': 1,
}
const WEAK_PULL = 0.08

type Drawing = UndirectedGraph<{ x: number; y: number }, { weight: number }>

function drawingOf(): Drawing {
  const { graph } = realWorld()
  const drawing: Drawing = new UndirectedGraph()
  const nodes = graph.filterNodes((node) => graph.degree(node) > 0).sort()
  for (const [at, node] of nodes.entries()) {
    const distance = Math.sqrt(at + 1)
    drawing.addNode(node, { x: distance * Math.cos(at * GOLDEN), y: distance * Math.sin(at * GOLDEN) })
  }
  const edges = graph.mapEdges((key, { relation }, from, to) => ({ key, relation, from, to }))
  for (const { relation, from, to } of edges.sort((a, b) => (a.key < b.key ? -1 : 1))) {
    const pull = PULL[relation] ?? WEAK_PULL
    if (from !== to) drawing.updateEdge(from, to, (old) => ({ weight: (old.weight ?? 0) + pull }))
  }
  return drawing
}

const drawing = drawingOf()
forceAtlas2.assign(drawing, {
  iterations: ITERATIONS,
  getEdgeWeight: 'weight',
  settings: {
    barnesHutOptimize: true,
    barnesHutTheta: 0.6,
    linLogMode: true,
    gravity: 0.15,
    scalingRatio: 10,
    slowDown: 4,
  },
})
const middle = (axis: 'x' | 'y'): number => {
  const sorted = drawing.mapNodes((_node, place) => place[axis]).sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)]!
}
const [x_0, y_0] = [middle('x'), middle('y')]
const reach = Math.max(...drawing.mapNodes((_node, { x, y }) => Math.max(Math.abs(x - x_0), Math.abs(y - y_0))))
const rows = drawing
  .nodes()
  .sort()
  .map((node) => {
    const { x, y } = drawing.getNodeAttributes(node)
    return [node, ...[x - x_0, y - y_0].map((value) => Math.round((value / reach) * REACH))].join('\t')
  })
writeFileSync(TABLE, `node\tx\ty\n${rows.join('\n')}\n`)
console.log(`${rows.length} places written`)
