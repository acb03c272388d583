import type { World } from './world.ts'

/** Where a node stands in the drawing of the whole graph; units of the drawing, y upwards. */
export interface Place {
  x: number
  y: number
}

/** Table of places, written by `npm run layout`. */
const TABLE = 'graph-layout'
/** How far from the middle of its neighbours a node without a stored place stands, as a share of the drawing. */
const ASIDE = 0.02

/** A number from 0 to 1 that depends on the text only (FNV-1a), so that a node without a place always gets the same one. */
export function fraction(text: string): number {
  let hash = 0x811c9dc5
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  return (hash >>> 0) / 2 ** 32
}

function storedPlaces({ knowledge, graph }: World): Map<string, Place> {
  const places = new Map<string, Place>()
  for (const row of knowledge.tables.get(TABLE) ?? []) {
    const { node = '', x = '', y = '' } = row
    const place = { x: Number(x), y: Number(y) }
    if (graph.hasNode(node) && x !== '' && y !== '' && Number.isFinite(place.x + place.y)) places.set(node, place)
  }
  return places
}

/** Half the width of what is placed; 1 where nothing is. */
const reachOf = (places: Iterable<Place>): number =>
  Math.max(0, ...[...places].flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)])) || 1

function beside(middle: Place, node: string, distance: number): Place {
  const turn = 2 * Math.PI * fraction(node)
  return { x: middle.x + distance * Math.cos(turn), y: middle.y + distance * Math.sin(turn) }
}

/** Middle of those neighbours that have a place; null where none has. */
function middleOf({ graph }: World, node: string, places: ReadonlyMap<string, Place>): Place | null {
  const near = [...new Set(graph.neighbors(node))].sort().flatMap((other) => places.get(other) ?? [])
  if (near.length === 0) return null
  const sum = near.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 })
  return { x: sum.x / near.length, y: sum.y / near.length }
}

/**
 * Places of all nodes: stored ones, then, round by round and by id, nodes beside the middle of neighbours that have one,
 * and at last on a circle around all what is joined to nothing. The same graph and table always give the same places.
 */
export function placesOf(world: World): Map<string, Place> {
  const places = storedPlaces(world)
  const reach = reachOf(places.values())
  let open = world.graph.filterNodes((node) => !places.has(node)).sort()
  for (let before = Infinity; open.length > 0 && open.length < before;) {
    before = open.length
    const found = open.flatMap((node) => {
      const middle = middleOf(world, node, places)
      return middle ? [[node, beside(middle, node, reach * ASIDE)] as const] : []
    })
    for (const [node, place] of found) places.set(node, place)
    open = open.filter((node) => !places.has(node))
  }
  for (const node of open) places.set(node, beside({ x: 0, y: 0 }, node, reach * 1.05))
  return places
}
