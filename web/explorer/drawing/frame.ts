import type { Scene } from '#web/explorer/scene.ts'

interface Size {
  width: number
  height: number
}
type Extent = [number, number]

/** Room that a sign of a label takes [px]. */
const SIGN_PX = 7.6
const MARGIN_PX = 24
/** Farther than this words get too small to be read beside one another: then it starts near and is moved. */
const FARTHEST_START = 1.35
const FARTHEST = 8
/** A first node this near to an end of the scene stands at that end [px]. */
const FIRST_EDGE_PX = 90

/** Left, right, lower and upper end of a scene on the screen [px], y upwards; labels do not shrink with the distance. */
function extentOf({ nodes }: Scene, longest: number, ratio: number): { x: Extent; y: Extent } {
  const x: Extent = [Infinity, -Infinity]
  const y: Extent = [Infinity, -Infinity]
  for (const { x: at, y: down, label, size, side } of nodes) {
    const room_px = Math.min(label.length, longest) * SIGN_PX + 2 * size
    const left = side === 'left' ? room_px : side === 'middle' ? room_px / 2 : size
    const right = side === 'right' ? room_px : side === 'middle' ? room_px / 2 : size
    x[0] = Math.min(x[0], at / ratio - left)
    x[1] = Math.max(x[1], at / ratio + right)
    y[0] = Math.min(y[0], -down / ratio)
    y[1] = Math.max(y[1], -down / ratio)
  }
  return nodes.length === 0 ? { x: [-1, 1], y: [-1, 1] } : { x, y }
}

/** The part of a scene that fills the drawing: as many units as there are pixels, or all there is. */
export function frameOf(scene: Scene, { width, height }: Size): { x: Extent; y: Extent } {
  if (scene.isTrueSize) return { x: [-width / 2, width / 2], y: [-height / 2, height / 2] }
  const { x, y } = extentOf(scene, 0, 1)
  const margin = (x[1] - x[0]) * 0.04
  return { x: [x[0] - margin, x[1] + margin], y: [y[0] - margin, y[1] + margin] }
}

/** The nearest distance from which a scene is seen whole, up to the farthest that is of use. */
function fitting(scene: Scene, { width, height }: Size, longest: number, farthest: number): number {
  const step = 1.03
  let ratio = 1
  for (; ratio < farthest; ratio *= step) {
    const { x, y } = extentOf(scene, longest, ratio)
    if (x[1] - x[0] + 2 * MARGIN_PX <= width && y[1] - y[0] + 2 * MARGIN_PX <= height) return ratio
  }
  return farthest
}

/**
 * Where the drawing is looked at first. A small scene is seen whole; of a large one the part about its first node,
 * unless all is asked for.
 */
export function startOf(scene: Scene, size: Size, longest: number, isAll = false) {
  const { width, height } = size
  if (!scene.isTrueSize || width === 0 || height === 0) return { x: 0.5, y: 0.5, ratio: 1 }
  const ratio = fitting(scene, size, longest, isAll ? FARTHEST : FARTHEST_START)
  const { x, y } = extentOf(scene, longest, ratio)
  const over = {
    x: Math.max(0, x[1] - x[0] + 2 * MARGIN_PX - width) / 2,
    y: Math.max(0, y[1] - y[0] + 2 * MARGIN_PX - height) / 2,
  }
  // What does not fit is seen from the side of its first node; where that stands between, it stays in the middle.
  const towards = (low: number, high: number, first: number): number =>
    Math.abs(low - first) < FIRST_EDGE_PX ? -1 : Math.abs(high - first) < FIRST_EDGE_PX ? 1 : 0
  const first = { x: (scene.nodes[0]?.x ?? 0) / ratio, y: -(scene.nodes[0]?.y ?? 0) / ratio }
  const turn = isAll ? { x: 0, y: 0 } : { x: towards(x[0], x[1], first.x), y: towards(y[0], y[1], first.y) }
  const centre = {
    x: over.x > 0 && turn.x === 0 && !isAll ? first.x : (x[0] + x[1]) / 2 + turn.x * over.x,
    y: over.y > 0 && turn.y === 0 && !isAll ? first.y : (y[0] + y[1]) / 2 + turn.y * over.y,
  }
  const unit = Math.max(width, height) / ratio
  return { x: 0.5 + centre.x / unit, y: 0.5 + centre.y / unit, ratio }
}

/**
 * How far a view has to go [px] to take in the points, without losing the one that counts; 0 where all are in it. Where
 * there is not enough room the one that counts comes to the edge.
 */
export function shiftInto(own: number, others: readonly number[], { from, to }: { from: number; to: number }): number {
  if (from >= to) return own - (from + to) / 2
  const [low, high] = [Math.min(own, ...others), Math.max(own, ...others)]
  const wanted = high > to ? high - to : low < from ? low - from : 0
  return Math.min(Math.max(wanted, own - to), own - from)
}
