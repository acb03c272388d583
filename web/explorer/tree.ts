import type { GraphEdge, GraphNode, Part } from '#web/client/use-graph.ts'
import type { WayStep } from './address.ts'
import { directionOf, readFrom, RELATIONS } from './relations.ts'
import type { Direction, Relation } from './relations.ts'

/** A neighbour under a relation. */
export interface NodeItem {
  kind: 'node'
  /** id of the node; with the group before it where the node stands elsewhere too */
  key: string
  node: GraphNode
  /** statements that join it to the node above; none for the first node */
  edges: GraphEdge[]
  isOnWay: boolean
  /** it stands in its own place elsewhere: shown here by name only */
  isAgain: boolean
  isOpen: boolean
  isLoading: boolean
  groups: GroupItem[]
}

/** All neighbours under one relation, read from one end. */
export interface GroupItem {
  kind: 'group'
  /** node>relation>direction */
  key: string
  of: string
  relation: string
  direction: Direction
  members: NodeItem[]
  /** members that are not shown */
  more: number
}

export interface TreeAsk {
  root: string
  way: readonly WayStep[]
  /** what is known of nodes, by the id that was asked for */
  parts: ReadonlyMap<string, Part>
  /** ids of nodes whose neighbours are shown */
  open: readonly string[]
  /** ids whose neighbours are on their way */
  loading: readonly string[]
  relations: readonly Relation[]
  /** keys of groups that are shown to their end */
  full: readonly string[]
}

/** Members of a group that are shown at first. */
export const AT_FIRST = 8

interface Entry {
  id: string
  edges: GraphEdge[]
  isOnWay: boolean
}
interface Group {
  relation: string
  direction: Direction
  entries: Map<string, Entry>
}

const kindOf = (id: string): GraphNode['kind'] => {
  const word = /^(role|class|limit):/.exec(id)?.[1]
  return word === 'role' || word === 'class' || word === 'limit' ? word : 'ingredient'
}

/** A node of a way of which no answer has told the name yet. */
const unnamed = (id: string): GraphNode => ({ id, kind: kindOf(id), label: id.replace(/^\w+:/, ''), links: 0 })

const rank = ({ relation, direction }: Group): number =>
  RELATIONS.findIndex((one) => one === relation) * 2 + (direction === 'in' ? 1 : 0)

/** Puts an edge into its group, under the node at its other end. */
function assignEdge(groups: Map<string, Group>, centre: string, edge: GraphEdge, isOnWay = false): void {
  const isFrom = edge.from === centre
  const direction = directionOf(edge.relation, isFrom)
  const key = `${edge.relation}>${direction}`
  const group = groups.get(key) ?? { relation: edge.relation, direction, entries: new Map<string, Entry>() }
  groups.set(key, group)
  const id = isFrom ? edge.to : edge.from
  const entry = group.entries.get(id)
  if (!entry) group.entries.set(id, { id, edges: [edge], isOnWay })
  else {
    entry.isOnWay ||= isOnWay
    if (!entry.edges.some((one) => one.id === edge.id)) entry.edges.push(edge)
  }
}

/** A step of a way as the edge that it went along; bare where no answer has told that edge. */
function edgeOfStep({ from, relation: name, to }: WayStep, known: readonly GraphEdge[]): GraphEdge {
  const { relation, direction } = readFrom(name)
  const [a, b] = direction === 'out' ? [from, to] : [to, from]
  const bare = { id: `${a}>${relation}>${b}`, from: a, to: b, relation }
  return known.find((edge) => edge.from === a && edge.to === b && edge.relation === relation) ?? bare
}

class Builder {
  private readonly nodes = new Map<string, GraphNode>()
  private readonly byCentre = new Map<string, Part>()
  private readonly loading: ReadonlySet<string>
  private readonly open: ReadonlySet<string>
  private readonly home = new Set<string>()
  /** node on the way → the one before it, under which it stands */
  private readonly before = new Map<string, string>()

  constructor(private readonly ask: TreeAsk) {
    for (const part of ask.parts.values()) {
      this.byCentre.set(part.centre, part)
      for (const node of part.nodes) this.nodes.set(node.id, node)
    }
    this.loading = new Set(ask.loading)
    this.open = new Set(ask.open.map((id) => ask.parts.get(id)?.centre ?? id))
    for (const { from, to } of ask.way) if (to !== ask.root && !this.before.has(to)) this.before.set(to, from)
  }

  private groupsAt(centre: string): Group[] {
    const groups = new Map<string, Group>()
    const known = this.byCentre.get(centre)?.edges ?? []
    for (const step of this.ask.way) if (step.from === centre) assignEdge(groups, centre, edgeOfStep(step, known), true)
    const part = this.open.has(centre) ? this.byCentre.get(centre) : undefined
    const order = new Map(part?.nodes.map(({ id }, at) => [id, at]))
    const wanted = (part?.edges ?? []).filter(({ relation }) => this.ask.relations.some((one) => one === relation))
    const otherEnd = ({ from, to }: GraphEdge): number => order.get(from === centre ? to : from) ?? 0
    for (const edge of wanted.sort((a, b) => otherEnd(a) - otherEnd(b))) assignEdge(groups, centre, edge)
    return [...groups.values()].sort((a, b) => rank(a) - rank(b))
  }

  /** Whether this is where a node stands: the first place found, on a way behind the one before it. */
  private takesHome(id: string, above: string): boolean {
    if (this.home.has(id) || (this.before.get(id) ?? above) !== above) return false
    this.home.add(id)
    return true
  }

  private member(entry: Entry, above: string, groupKey: string): NodeItem {
    const isHome = this.takesHome(entry.id, above)
    return {
      kind: 'node',
      key: isHome ? entry.id : `${groupKey}>${entry.id}`,
      node: this.nodes.get(entry.id) ?? unnamed(entry.id),
      edges: entry.edges,
      isOnWay: entry.isOnWay,
      isAgain: !isHome,
      isOpen: isHome && this.open.has(entry.id),
      isLoading: isHome && this.open.has(entry.id) && this.loading.has(entry.id),
      groups: [],
    }
  }

  private group({ relation, direction, entries }: Group, of: string): GroupItem {
    const key = `${of}>${relation}>${direction}`
    const all = [...entries.values()].sort((a, b) => Number(b.isOnWay) - Number(a.isOnWay))
    const shown = this.ask.full.includes(key) || all.length <= AT_FIRST + 1 ? all.length : AT_FIRST
    const members = all.slice(0, shown).map((entry) => this.member(entry, of, key))
    return { kind: 'group', key, of, relation, direction, members, more: all.length - shown }
  }

  /** Ring by ring, so that a node stands as near to the first as it can. */
  build(): NodeItem {
    const id = this.ask.parts.get(this.ask.root)?.centre ?? this.ask.root
    const root = this.member({ id, edges: [], isOnWay: this.ask.way.length > 0 }, id, '')
    for (let ring = [root]; ring.length > 0;) {
      for (const item of ring) item.groups = this.groupsAt(item.node.id).map((group) => this.group(group, item.node.id))
      ring = ring.flatMap(({ groups }) => groups.flatMap(({ members }) => members.filter(({ isAgain }) => !isAgain)))
    }
    return root
  }
}

/**
 * What is shown, as a tree: the first node, below it its relations, below those the neighbours, and so on for each that
 * is open. A node stands in one place; wherever else it is joined it is named again, so that no edge is lost. Drawing,
 * table and outline all show this tree.
 */
export const buildTree = (ask: TreeAsk): NodeItem => new Builder(ask).build()

/** All nodes of a tree, each once in its place. */
export function nodesIn(root: NodeItem): NodeItem[] {
  return [root, ...root.groups.flatMap(({ members }) => members.filter(({ isAgain }) => !isAgain).flatMap(nodesIn))]
}

/** All groups of a tree. */
export const groupsIn = (root: NodeItem): GroupItem[] => nodesIn(root).flatMap(({ groups }) => groups)
