import { MultiDirectedGraph } from 'graphology'
import { termsTexts } from '#engine/knowledge/expand-terms.ts'
import type { Range } from '#engine/units/range.ts'
import { graphAround } from './graph-around.ts'
import type { GraphPart, GraphQuery } from './graph-around.ts'
import { edgeOf } from './graph-edge.ts'
import type { GraphEdge } from './graph-edge.ts'
import { nodeOf } from './links.ts'
import type { Node } from './links.ts'
import { rangeOfProperty, wordOf } from './subject.ts'
import type { World } from './world.ts'

/** What every format can carry: a text or a number under a flat name. */
export type Flat = Record<string, string | number>

/** A graph to be read by others: no nested values, the terms among its own attributes. */
export type FlatGraph = MultiDirectedGraph<Flat, Flat, Flat>

/** Signs that no XML may hold, not even escaped. */
const NO_XML = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu

/** Keeps what is known: a value that is missing has no attribute. */
function flat(values: Readonly<Record<string, string | number | undefined>>): Flat {
  const out: Flat = {}
  for (const [name, value] of Object.entries(values)) {
    if (typeof value === 'number') out[name] = value
    else if (value !== undefined && value !== '') out[name] = value.replace(NO_XML, '')
  }
  return out
}

const ends = (name: string, unit: string, range: Range | null | undefined) => ({
  [`${name}_min${unit}`]: range?.min,
  [`${name}_max${unit}`]: range?.max,
})

function nodeAttributes(world: World, { id, kind, label }: Node): Flat {
  const subject = kind === 'ingredient' ? world.find(id) : null
  if (!subject) return flat({ label, kind })
  return flat({
    label,
    kind,
    tier: subject.tier,
    cas: subject.cas.join('; '),
    names: subject.names.exact.join('; '),
    solubility: wordOf(subject, 'solubility'),
    form: wordOf(subject, 'form'),
    ...ends('keeps_ph', '', rangeOfProperty(subject, 'ph_stability')),
    ...ends('works_ph', '', rangeOfProperty(subject, 'ph_effective')),
    ...ends('heat_min', '_c', rangeOfProperty(subject, 'heat_min_c')),
    heat_max_c: rangeOfProperty(subject, 'heat_max_c')?.max,
  })
}

const edgeAttributes = (edge: GraphEdge): Flat =>
  flat({
    relation: edge.relation,
    says: edge.says,
    severity: edge.severity,
    grade: edge.grade,
    ratio: edge.ratio,
    ...ends('level', '_percent', edge.level_percent),
    level_typical_percent: edge.level_percent?.typical,
    ...ends('ph', '', edge.ph),
    ...ends('heat', '_c', edge.heat_c),
    evidence: edge.kind,
    source: edge.source,
    locator: edge.locator,
    access: edge.access,
    date: edge.date,
  })

function graphAttributes({ knowledge }: World, around: string | undefined): Flat {
  const { terms, version } = knowledge
  const what = around === undefined ? 'the whole graph' : `the part around ${around}`
  return flat({
    creator: `Understudy; ${terms.holder}`,
    keywords: 'cosmetic ingredients, roles, substitution, compatibility',
    description: [`Role graph of cosmetic ingredients, ${what}, version ${version}.`, ...termsTexts(terms)].join(' '),
    version,
    licence: terms.licence.title,
    licence_link: terms.licence.link,
    attributions: termsTexts(terms).join(' '),
    ...(around !== undefined && { around }),
  })
}

/** Every node with every stated edge. Derived edges of compatibility are left to their windows, which stand on the nodes. */
function wholeGraph(world: World): { nodes: Node[]; edges: GraphPart['edges'] } {
  const { graph } = world
  return {
    nodes: graph.mapNodes((id) => nodeOf(world, id)),
    edges: graph.mapEdges((key, attributes, from, to) => edgeOf({ key, from, to, attributes })),
  }
}

/**
 * The whole graph, or the whole neighbourhood of a node, with flat attributes, version and terms; null when there is no
 * such node.
 */
export function exportGraph(world: World, part?: Pick<GraphQuery, 'around' | 'steps' | 'relations'>): FlatGraph | null {
  const found = part ? graphAround(world, { ...part, limit: Infinity }) : wholeGraph(world)
  if (!found) return null
  const out: FlatGraph = new MultiDirectedGraph()
  out.replaceAttributes(graphAttributes(world, part?.around))
  for (const node of found.nodes) out.addNode(node.id, nodeAttributes(world, node))
  for (const edge of found.edges) out.addDirectedEdgeWithKey(edge.id, edge.from, edge.to, edgeAttributes(edge))
  return out
}
