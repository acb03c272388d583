import { MultiGraph } from 'graphology'
import type { Scene, SceneEdge, SceneNode } from '#web/explorer/scene.ts'
import { DASHED, FORMS, STRUCK } from './mark-program.ts'
import type { Palette } from './palette.ts'

const formOf = ({ shape, holding }: SceneNode): number =>
  FORMS[shape] + (holding === 'unknown' ? DASHED : holding === 'fails' ? STRUCK : 0)

/** A mark smaller than this is all ring where it has one of another colour [px]. */
const RING_FROM_PX = 5

/** Colours of fill and ring: words are hollow, things are filled; what is not known is hollow too. */
function coloursOf({ shape, holding, isOnWay, size }: SceneNode, { node, ware, ink, faded }: Palette) {
  const own = node[shape] ?? ink
  const isHollow = holding === 'unknown' || shape !== 'ingredient'
  const [color, line] = [
    isHollow ? ware : own,
    isOnWay || (shape === 'ingredient' && !isHollow && size >= RING_FROM_PX) ? ink : own,
  ]
  if (holding === 'fails') return { color: faded(color), line: faded(line) }
  return { color, line }
}

const WIDTH_PX = { line: 1, way: 4, again: 1, plain: 1.6 }

function widthOf({ isOnWay, isAgain }: SceneEdge, isLine: boolean): number {
  if (isLine) return WIDTH_PX.line
  return isOnWay ? WIDTH_PX.way : isAgain ? WIDTH_PX.again : WIDTH_PX.plain
}

/** Radius above which a mark is the first of a drawing [px]. */
const FIRST_FROM_PX = 10

/** What the drawing library draws: every mark and line with its colour and size. */
export function graphOfScene({ nodes, edges, isTrueSize }: Scene, palette: Palette): MultiGraph {
  const graph = new MultiGraph()
  for (const node of nodes) {
    const { key, x, y, size, label, shape, side, holding, isOnWay } = node
    const form = formOf(node)
    const colours = coloursOf(node, palette)
    const forceLabel = isTrueSize && (isOnWay || size > FIRST_FROM_PX)
    graph.mergeNode(key, {
      ...{ x, y: -y, size, label, shape, side, holding, isOnWay, form, forceLabel },
      isFirst: isTrueSize && size > FIRST_FROM_PX,
      mayTurn: !isTrueSize,
      ...colours,
      type: 'mark',
    })
  }
  for (const edge of edges) {
    if (!graph.hasNode(edge.from) || !graph.hasNode(edge.to)) continue
    const own = palette.relation(edge.relation, isTrueSize ? 'tree' : 'whole')
    const isFaint = edge.holding === 'fails' || edge.isAgain
    const color = edge.isOnWay ? palette.ink : isFaint ? palette.faded(own) : own
    const type = isTrueSize ? 'bar' : 'line'
    graph.mergeEdgeWithKey(edge.key, edge.from, edge.to, { color, size: widthOf(edge, !isTrueSize), type })
  }
  return graph
}
