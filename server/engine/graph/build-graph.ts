import { MultiDirectedGraph } from 'graphology'
import type { Limit, Provenance } from '#engine/model/records.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import type { Subject } from './subject.ts'

export interface NodeAttributes {
  kind: 'ingredient' | 'role' | 'class' | 'limit'
  label: string
}

export interface EdgeAttributes extends Partial<Provenance> {
  relation: string
  says?: string
  severity?: string
  ratio?: number
  grade?: string
  level_percent?: { min?: number; max?: number; typical?: number }
}

export type RoleGraph = MultiDirectedGraph<NodeAttributes, EdgeAttributes>

/** class:x, role:x or an id as the key of a node; null for selectors with several terms, which are no single end. */
const nodeOf = (selector: string): string | null => (/[&!]/.test(selector) ? null : selector)

/** Adds an edge under the key from>relation>to; a second statement of the same edge gets a number. */
function addEdge(graph: RoleGraph, from: string, to: string | null, attributes: EdgeAttributes): void {
  if (to === null || !graph.hasNode(from) || !graph.hasNode(to)) return
  const key = `${from}>${attributes.relation}>${to}`
  let free = key
  for (let n = 2; graph.hasEdge(free); n++) free = `${key}#${n}`
  graph.addDirectedEdgeWithKey(free, from, to, attributes)
}

const provenance = ({ kind, source, locator, access, date }: Provenance): Provenance => ({
  kind,
  source,
  locator,
  access,
  date,
})

/** An entry is seen where its first row was seen; an opinion is no law. */
export function limitedBy(limit: Limit): EdgeAttributes {
  const [row] = limit.rows
  return {
    relation: 'limited-by',
    says: limit.title,
    ...(row && {
      kind: limit.kind === 'law' ? 'law' : 'assertion',
      source: row.source,
      locator: row.locator,
      access: row.access,
      date: limit.date,
    }),
  }
}

function addIngredientEdges(graph: RoleGraph, subject: Subject): void {
  for (const claim of subject.roles) {
    const level = claim.level_percent && { level_percent: claim.level_percent }
    addEdge(graph, subject.id, `role:${claim.role}`, { relation: 'plays', ...level, ...provenance(claim) })
  }
  for (const id of subject.classes)
    addEdge(graph, subject.id, `class:${id}`, { relation: 'is-a', ...provenance(subject.classProvenance) })
  for (const part of subject.madeOf) {
    const level = { level_percent: { typical: part.share_percent } }
    addEdge(graph, subject.id, part.ingredient, {
      relation: 'made-of',
      ...level,
      ...provenance(subject.classProvenance),
    })
  }
  for (const c of subject.clashes) {
    addEdge(graph, subject.id, nodeOf(c.with), {
      relation: 'clashes-with',
      says: c.says,
      ...(c.severity && { severity: c.severity }),
      ...provenance(c),
    })
  }
  for (const need of subject.needs) {
    for (const one of need.any_of)
      addEdge(graph, subject.id, nodeOf(one), { relation: 'needs', says: need.says, ...provenance(need) })
  }
  for (const b of subject.boostedBy)
    addEdge(graph, subject.id, nodeOf(b.with), { relation: 'boosted-by', says: b.says, ...provenance(b) })
  for (const b of subject.inactivatedBy)
    addEdge(graph, subject.id, nodeOf(b.with), { relation: 'inactivated-by', says: b.says, ...provenance(b) })
  for (const s of subject.standsFor) {
    const extra = { ...(s.ratio !== undefined && { ratio: s.ratio }), ...(s.grade && { grade: s.grade }) }
    addEdge(graph, subject.id, nodeOf(s.for), { relation: 'stands-in-for', says: s.says, ...extra, ...provenance(s) })
  }
  for (const n of subject.notFor)
    addEdge(graph, subject.id, nodeOf(n.for), { relation: 'does-not-stand-in-for', says: n.says, ...provenance(n) })
}

function addVocabulary(graph: RoleGraph, knowledge: Knowledge): void {
  for (const role of knowledge.roles.values()) graph.addNode(`role:${role.id}`, { kind: 'role', label: role.label })
  for (const one of knowledge.classes.values()) graph.addNode(`class:${one.id}`, { kind: 'class', label: one.id })
  for (const limit of knowledge.limits) graph.addNode(`limit:${limit.id}`, { kind: 'limit', label: limit.title })
  for (const role of knowledge.roles.values()) {
    if (role.broader) addEdge(graph, `role:${role.id}`, `role:${role.broader}`, { relation: 'broader' })
    for (const other of role.confusedWith)
      addEdge(graph, `role:${role.id}`, `role:${other}`, { relation: 'confused-with' })
  }
}

/** The role graph: ingredients, roles, classes and limits, with every relation that a record states. */
export function buildRoleGraph(knowledge: Knowledge, subjects: readonly Subject[]): RoleGraph {
  const graph: RoleGraph = new MultiDirectedGraph()
  addVocabulary(graph, knowledge)
  for (const subject of subjects) graph.addNode(subject.id, { kind: 'ingredient', label: subject.inci })
  for (const subject of subjects) addIngredientEdges(graph, subject)
  for (const clash of knowledge.clashes) {
    const [a, b] = clash.between.map(nodeOf)
    if (a && b)
      addEdge(graph, a, b, {
        relation: 'clashes-with',
        says: clash.says,
        severity: clash.severity,
        ...provenance(clash),
      })
  }
  for (const limit of knowledge.limits) {
    const ends = [...Object.keys(limit.members), ...limit.memberClasses.map((id) => `class:${id}`)]
    for (const end of ends) addEdge(graph, end, `limit:${limit.id}`, limitedBy(limit))
  }
  return graph
}
