import type { Provenance } from '#engine/model/records.ts'
import { limitedBy } from './build-graph.ts'
import type { EdgeAttributes, NodeAttributes } from './build-graph.ts'
import type { Subject } from './subject.ts'
import type { World } from './world.ts'

/** One edge with the node it starts and ends at. */
export interface Link {
  key: string
  from: string
  to: string
  attributes: EdgeAttributes
}

export interface Node {
  id: string
  kind: NodeAttributes['kind']
  label: string
}

const byKey = (a: Link, b: Link): number => (a.key < b.key ? -1 : 1)

const origin = ({ kind, source, locator, access, date }: Provenance): Provenance => ({
  kind,
  source,
  locator,
  access,
  date,
})

/** Edges of a name that has no node of its own: what was derived for it when it was looked up. */
function derivedLinks(subject: Subject): Link[] {
  const link = (to: string, attributes: EdgeAttributes): Link => ({
    key: `${subject.id}>${attributes.relation}>${to}`,
    from: subject.id,
    to,
    attributes,
  })
  const links = [
    ...subject.roles.map((claim) => link(`role:${claim.role}`, { relation: 'plays', ...origin(claim) })),
    ...[...subject.classes].map((id) => link(`class:${id}`, { relation: 'is-a', ...origin(subject.classProvenance) })),
    ...subject.madeOf.map((part) => link(part.ingredient, { relation: 'made-of', ...origin(subject.classProvenance) })),
    ...subject.limits.map((limit) => link(`limit:${limit.id}`, limitedBy(limit))),
  ]
  return [...new Map(links.map((one) => [one.key, one])).values()]
}

/** All edges at a node of the role graph, or at a name derived from the inventory; by key. */
export function linksOf(world: World, node: string): Link[] {
  const { graph } = world
  if (!graph.hasNode(node)) {
    const subject = world.find(node)
    return subject ? derivedLinks(subject).sort(byKey) : []
  }
  return graph.mapEdges(node, (key, attributes, from, to) => ({ key, from, to, attributes })).sort(byKey)
}

/** The other ends of all edges at a node that fit, in no order: for walks, which need neither keys nor statements. */
export function endsOf(world: World, node: string, relations: ReadonlySet<string>): string[] {
  const { graph } = world
  if (!graph.hasNode(node)) {
    return linksOf(world, node).flatMap(({ to, attributes }) => (relations.has(attributes.relation) ? [to] : []))
  }
  const ends: string[] = []
  graph.forEachEdge(node, (_key, { relation }, from, to) => {
    if (relations.has(relation)) ends.push(from === node ? to : from)
  })
  return ends
}

/** Kind and label of a node; a name that stands only in the inventory is an ingredient too. */
export function nodeOf(world: World, id: string): Node {
  if (world.graph.hasNode(id)) {
    const { kind, label } = world.graph.getNodeAttributes(id)
    return { id, kind, label }
  }
  return { id, kind: 'ingredient', label: world.find(id)?.inci ?? id }
}

/** What an edge says and where that comes from, without its ends. */
export function statementOf({ says, severity, kind, source, locator, access, date }: EdgeAttributes) {
  return {
    ...(says !== undefined && says !== '' && { says }),
    ...(severity !== undefined && { severity }),
    ...(kind !== undefined && { kind }),
    ...(source !== undefined && { source }),
    ...(locator !== undefined && { locator }),
    ...(access !== undefined && { access }),
    ...(date !== undefined && { date }),
  }
}
