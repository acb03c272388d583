import { DirectedGraph } from 'graphology'
import { bfsFromNode } from 'graphology-traversal'
import type { Role } from '#engine/model/records.ts'

/** Closures over the hierarchy of roles, worked out once by traversal. */
export interface RoleTree {
  /** the role and all broader ones, nearest first */
  above(role: string): readonly string[]
  /** the role and all narrower ones */
  below(role: string): readonly string[]
  /** steps between two roles over their nearest common broader role; Infinity when they share none */
  distance(a: string, b: string): number
}

export function buildRoleTree(roles: ReadonlyMap<string, Role>): RoleTree {
  const tree = new DirectedGraph()
  for (const id of roles.keys()) tree.addNode(id)
  for (const role of roles.values()) {
    if (role.broader && tree.hasNode(role.broader)) tree.addEdge(role.id, role.broader)
  }
  const walk = (role: string, mode: 'outbound' | 'inbound'): string[] => {
    const reached: string[] = []
    if (!tree.hasNode(role)) return reached
    bfsFromNode(tree, role, (node) => void reached.push(node), { mode })
    return reached
  }
  const up = new Map([...roles.keys()].map((id) => [id, walk(id, 'outbound')]))
  const down = new Map([...roles.keys()].map((id) => [id, walk(id, 'inbound')]))
  const above = (role: string) => up.get(role) ?? []
  return {
    above,
    below: (role) => down.get(role) ?? [],
    distance: (a, b) => {
      const ofB = above(b)
      const meet = above(a).findIndex((role) => ofB.includes(role))
      return meet < 0 ? Infinity : meet + ofB.indexOf(above(a)[meet] ?? '')
    },
  }
}
