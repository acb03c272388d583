import type { Flat, FlatGraph } from './export-graph.ts'

type Domain = 'graph' | 'node' | 'edge'

const ESCAPES: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
}

const escaped = (text: string): string => text.replace(/[&<>"\t\n\r]/g, (sign) => ESCAPES[sign] ?? sign)

const keyOf = (domain: Domain, name: string): string => `${domain}-${name}`

/** Declares every attribute that is used; a name that holds a text anywhere is a text. */
function declarations(domain: Domain, all: readonly Flat[]): string[] {
  const types = new Map<string, 'double' | 'string'>()
  for (const attributes of all) {
    for (const [name, value] of Object.entries(attributes)) {
      const type = typeof value === 'number' ? 'double' : 'string'
      if (types.get(name) !== 'string') types.set(name, type)
    }
  }
  return [...types].map(
    ([name, type]) =>
      `  <key id="${keyOf(domain, name)}" for="${domain}" attr.name="${escaped(name)}" attr.type="${type}"/>`,
  )
}

const dataOf = (domain: Domain, attributes: Flat): string =>
  Object.entries(attributes)
    .map(([name, value]) => `<data key="${keyOf(domain, name)}">${escaped(String(value))}</data>`)
    .join('')

/**
 * A graph as GraphML 1.0 with declared attributes.
 * Source of the form: graphml.graphdrawing.org, GraphML primer (from memory); checked by reading it back.
 */
export function writeGraphml(graph: FlatGraph): string {
  const nodes = graph.mapNodes((id, attributes) => ({ id, attributes }))
  const edges = graph.mapEdges((id, attributes, from, to) => ({ id, attributes, from, to }))
  const own = graph.getAttributes()
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<graphml xmlns="http://graphml.graphdrawing.org/xmlns" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" ' +
      'xsi:schemaLocation="http://graphml.graphdrawing.org/xmlns http://graphml.graphdrawing.org/xmlns/1.0/graphml.xsd">',
    ...declarations('graph', [own]),
    ...declarations(
      'node',
      nodes.map(({ attributes }) => attributes),
    ),
    ...declarations(
      'edge',
      edges.map(({ attributes }) => attributes),
    ),
    '  <graph id="understudy" edgedefault="directed">',
    `    ${dataOf('graph', own)}`,
    ...nodes.map(({ id, attributes }) => `    <node id="${escaped(id)}">${dataOf('node', attributes)}</node>`),
    ...edges.map(
      ({ id, from, to, attributes }) =>
        `    <edge id="${escaped(id)}" source="${escaped(from)}" target="${escaped(to)}">${dataOf('edge', attributes)}</edge>`,
    ),
    '  </graph>',
    '</graphml>',
    '',
  ].join('\n')
}
