import type { Range } from '#engine/units/range.ts'
import { linksOf, nodeOf } from './links.ts'
import type { Node } from './links.ts'
import { rangeOfProperty } from './subject.ts'
import type { World } from './world.ts'

/** pH in which an ingredient keeps and works, heat that it bears [C]; what is not known has no key. */
export interface NodeWindows {
  ph_stability?: Range
  ph_effective?: Range
  heat_max_c?: number
}

/** A node as it is drawn: with its windows, where any is known, and how many edges it has in all. */
export interface DrawnNode extends Node {
  windows?: NodeWindows
  /** stated edges at the node, of all relations; derived ones (holds-with) are not counted */
  links: number
}

/** Windows of an ingredient; undefined where none is known, and for words, which have none. */
export function windowsOfNode(world: World, { id, kind }: Node): NodeWindows | undefined {
  const subject = kind === 'ingredient' ? world.find(id) : null
  if (!subject) return undefined
  const ph_stability = rangeOfProperty(subject, 'ph_stability')
  const ph_effective = rangeOfProperty(subject, 'ph_effective')
  const heat_max_c = rangeOfProperty(subject, 'heat_max_c')?.max
  if (!ph_stability && !ph_effective && heat_max_c === undefined) return undefined
  return {
    ...(ph_stability && { ph_stability }),
    ...(ph_effective && { ph_effective }),
    ...(heat_max_c !== undefined && { heat_max_c }),
  }
}

export function drawnNode(world: World, id: string): DrawnNode {
  const node = nodeOf(world, id)
  const windows = windowsOfNode(world, node)
  const links = world.graph.hasNode(id) ? world.graph.degree(id) : linksOf(world, id).length
  return { ...node, ...(windows && { windows }), links }
}
