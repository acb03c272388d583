import { MultiDirectedGraph } from 'graphology'
import { bfsFromNode } from 'graphology-traversal'
import { buildScreen } from '#engine/graph/screen.ts'
import { CLASSES } from './role-question.ts'
import type { MadeGraph, RoleQuestion } from './role-question.ts'

/** Ids that share a role, most shared roles first, ties by id. */
export type RoleEngine = (question: RoleQuestion) => number[]

/** Classes that clash with one of a line of the rest. */
function blockedClasses({ ingredients, clashes }: MadeGraph, rest: readonly number[]): number[] {
  const own = new Set(rest.flatMap((id) => ingredients[id]!.classes))
  return Array.from({ length: CLASSES }, (_, one) => one).filter((one) => [...own].some((c) => clashes[c]![one] === 1))
}

/** The index that the search for ingredients uses. */
export function screenEngine(graph: MadeGraph): RoleEngine {
  const { find } = buildScreen(
    graph.ingredients.map(({ roles, classes, ph_low, ph_high, heat_c }) => ({
      keys: new Set([...roles.map((role) => `role:${role}`), ...classes.map((one) => `class:${one}`)]),
      windows: { keeps: { min: ph_low, max: ph_high }, heat: { max: heat_c } },
    })),
  )
  return ({ missing, rest, ph, heat_c }) => {
    const roles = graph.ingredients[missing]!.roles.map((role) => `role:${role}`)
    return find({
      all: [roles],
      none: blockedClasses(graph, rest).map((one) => `class:${one}`),
      within: [
        { window: 'keeps', value: ph, unknown: false },
        { window: 'heat', value: heat_c, unknown: false },
      ],
      rankBy: roles,
    }).filter((id) => id !== missing)
  }
}

const bitsOf = (places: readonly number[]): number => places.reduce((bits, place) => bits | (1 << place), 0)

function countBits(bits: number): number {
  let count = 0
  for (let left = bits; left !== 0; left &= left - 1) count++
  return count
}

const HALF = 20 // roles in the first of two numbers

/** All ingredients one after the other in flat arrays. */
export function scanEngine(graph: MadeGraph): RoleEngine {
  const { ingredients } = graph
  const low = Float64Array.from(ingredients, (one) => one.ph_low)
  const high = Float64Array.from(ingredients, (one) => one.ph_high)
  const heat = Float64Array.from(ingredients, (one) => one.heat_c)
  const classes = Uint32Array.from(ingredients, (one) => bitsOf(one.classes))
  const first = Uint32Array.from(ingredients, ({ roles }) => bitsOf(roles.filter((role) => role < HALF)))
  const second = Uint32Array.from(ingredients, ({ roles }) =>
    bitsOf(roles.filter((role) => role >= HALF).map((role) => role - HALF)),
  )
  return ({ missing, rest, ph, heat_c }) => {
    const blocked = bitsOf(blockedClasses(graph, rest))
    const a = first[missing]!
    const b = second[missing]!
    const byShared: number[][] = [[], [], [], []]
    for (let id = 0; id < low.length; id++) {
      const shared = countBits(first[id]! & a) + countBits(second[id]! & b)
      if (shared === 0 || low[id]! > ph || high[id]! < ph || heat[id]! <= heat_c) continue
      if ((classes[id]! & blocked) === 0 && id !== missing) byShared[shared]!.push(id)
    }
    return byShared.reverse().flat()
  }
}

interface NodeAttributes {
  kind: 'role' | 'class' | 'ingredient'
  id: number
  ph_low: number
  ph_high: number
  heat_c: number
  classes: string[]
}

type Drawn = MultiDirectedGraph<NodeAttributes>

function drawn({ ingredients, clashes }: MadeGraph): Drawn {
  const graph: Drawn = new MultiDirectedGraph()
  const nothing = { id: -1, ph_low: 0, ph_high: 0, heat_c: 0, classes: [] }
  const roles = new Set(ingredients.flatMap((one) => one.roles))
  for (const role of roles) graph.addNode(`r${role}`, { kind: 'role', ...nothing })
  for (let one = 0; one < CLASSES; one++) graph.addNode(`c${one}`, { kind: 'class', ...nothing })
  for (const { id, ph_low, ph_high, heat_c, classes, roles: own } of ingredients) {
    const names = classes.map((one) => `c${one}`)
    graph.addNode(`i${id}`, { kind: 'ingredient', id, ph_low, ph_high, heat_c, classes: names })
    for (const role of own) graph.addDirectedEdge(`i${id}`, `r${role}`)
    for (const name of names) graph.addDirectedEdge(`i${id}`, name)
  }
  for (const [a, row] of clashes.entries()) {
    for (const [b, clash] of row.entries()) if (clash === 1) graph.addDirectedEdge(`c${a}`, `c${b}`)
  }
  return graph
}

const bears = (one: NodeAttributes, { ph, heat_c }: RoleQuestion, blocked: ReadonlySet<string>): boolean =>
  one.ph_low <= ph && one.ph_high >= ph && one.heat_c > heat_c && !one.classes.some((own) => blocked.has(own))

function blockedNodes(graph: Drawn, rest: readonly number[]): Set<string> {
  const blocked = new Set<string>()
  for (const id of rest) {
    for (const own of graph.getNodeAttribute(`i${id}`, 'classes')) graph.forEachOutNeighbor(own, (c) => blocked.add(c))
  }
  return blocked
}

const bySharedRoles = (found: [id: number, shared: number][]): number[] =>
  found.sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([id]) => id)

/** Neighbours of neighbours, written by hand over the graph library. */
export function graphEngine(made: MadeGraph): RoleEngine {
  const graph = drawn(made)
  return (question) => {
    const blocked = blockedNodes(graph, question.rest)
    const missing = `i${question.missing}`
    const shared = new Map<string, number>()
    graph.forEachOutNeighbor(missing, (role, { kind }) => {
      if (kind === 'role') graph.forEachInNeighbor(role, (one) => shared.set(one, (shared.get(one) ?? 0) + 1))
    })
    const found = [...shared].flatMap(([node, count]): [number, number][] => {
      const one = graph.getNodeAttributes(node)
      return node !== missing && bears(one, question, blocked) ? [[one.id, count]] : []
    })
    return bySharedRoles(found)
  }
}

/** The library's own walk, from the missing ingredient through its roles. */
export function traversalEngine(made: MadeGraph): RoleEngine {
  const graph = drawn(made)
  return (question) => {
    const blocked = blockedNodes(graph, question.rest)
    const missing = `i${question.missing}`
    const roles = new Set(graph.filterOutNeighbors(missing, (_node, { kind }) => kind === 'role'))
    const found: [number, number][] = []
    const walk = (node: string, one: NodeAttributes, depth: number): boolean => {
      if (depth === 0) return false
      if (one.kind !== 'ingredient') return depth > 1 || one.kind === 'class'
      if (bears(one, question, blocked)) {
        let shared = 0
        graph.forEachOutNeighbor(node, (role) => (shared += roles.has(role) ? 1 : 0))
        found.push([one.id, shared])
      }
      return true
    }
    // Out to the roles, in again to those who play them.
    bfsFromNode(graph, missing, walk, { mode: 'directed' })
    return bySharedRoles(found)
  }
}
