import type { Holding } from './holds.ts'

/** What the drawing draws: places in pixels at full size, y downwards. */
export interface SceneNode {
  /** id of a node; key of a group for words and for "more" */
  key: string
  shape: 'ingredient' | 'role' | 'class' | 'limit' | 'words' | 'more'
  x: number
  y: number
  /** radius [px] */
  size: number
  label: string
  /** where the label stands beside the mark */
  side: 'left' | 'right' | 'middle'
  holding: Holding
  isOnWay: boolean
  isOpen: boolean
}

export interface SceneEdge {
  key: string
  from: string
  to: string
  relation: string
  holding: Holding
  isOnWay: boolean
  /** leads to a node that stands in another place */
  isAgain: boolean
}

export interface Scene {
  nodes: SceneNode[]
  edges: SceneEdge[]
  /** true: 1 unit is 1 px at first; false: all is fitted into the drawing */
  isTrueSize: boolean
  /** marks smaller than this have no label [px] */
  labelsFrom_px: number
  /** height that the drawing would like to have [px] */
  height_px: number
}

export const isNode = ({ shape }: SceneNode): boolean => shape !== 'words'

type Point = Pick<SceneNode, 'key' | 'x' | 'y'>
export type Side = 'left' | 'right' | 'up' | 'down'

const AHEAD: Readonly<Record<Side, (dx: number, dy: number) => number>> = {
  left: (dx) => -dx,
  right: (dx) => dx,
  up: (_dx, dy) => -dy,
  down: (_dx, dy) => dy,
}
/** How much worse it is to be off to the side than far ahead. */
const ASIDE = 2.5

/** The node that lies nearest in a direction; null where nothing lies there. */
export function nodeToThe(side: Side, from: Point, points: readonly Point[]): string | null {
  let best: { key: string; cost: number } | null = null
  for (const { key, x, y } of points) {
    const [dx, dy] = [x - from.x, y - from.y]
    const ahead = AHEAD[side](dx, dy)
    const across = Math.abs(side === 'left' || side === 'right' ? dy : dx)
    if (key === from.key || ahead <= 0) continue
    const cost = ahead + across * ASIDE
    if (!best || cost < best.cost || (cost === best.cost && key < best.key)) best = { key, cost }
  }
  return best?.key ?? null
}
