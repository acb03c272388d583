import type { GraphEdge, GraphNode, Part } from '#web/client/use-graph.ts'

const kindOf = (id: string): GraphNode['kind'] => {
  const word = id.split(':')[0]
  return word === 'role' || word === 'class' || word === 'limit' ? word : 'ingredient'
}

/** A node of which nothing but its name is known, unless said otherwise. */
export const makeNode = (id: string, more: Partial<GraphNode> = {}): GraphNode => ({
  ...{ id, kind: kindOf(id), label: id.replace(/^\w+:/, '').toUpperCase(), links: 1 },
  ...more,
})

/** "a plays role:b" as an edge. */
export function makeEdge(words: string, more: Partial<GraphEdge> = {}): GraphEdge {
  const [from = '', relation = '', to = ''] = words.split(' ')
  return { id: `${from}>${relation}>${to}`, from, to, relation, ...more }
}

/** What the server tells of a node: the edges at it, and by them its neighbours in that order. */
export function makePart(
  centre: string,
  edges: readonly (string | GraphEdge)[],
  nodes: readonly GraphNode[] = [],
): Part {
  const all = edges.map((edge) => (typeof edge === 'string' ? makeEdge(edge) : edge))
  const ids = [...new Set([centre, ...all.flatMap(({ from, to }) => [from, to])])]
  return { centre, nodes: ids.map((id) => nodes.find((node) => node.id === id) ?? makeNode(id)), edges: all }
}

export const partsOf = (...parts: Part[]): Map<string, Part> => new Map(parts.map((part) => [part.centre, part]))
