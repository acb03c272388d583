import type { SceneNode } from './scene.ts'

/** A thing to be placed: its label's width, and what hangs on it. */
export interface Branch {
  key: string
  /** room that mark and label take [px] */
  width_px: number
  branches: Branch[]
}

export interface Placed {
  x: number
  y: number
  side: SceneNode['side']
}

export interface Layout {
  places: Map<string, Placed>
  /** height of all [px] */
  height_px: number
}

/** From one row to the next [px]: a label fits between. */
export const ROW_PX = 24
/** Between one group of the first node and the next, in rows. */
const GROUP_GAP = 0.5
const COLUMN_GAP_PX = 32
const INDENT_PX = 26
/** From the first node to the words beside it [px]. */
const FIRST_GAP_PX = 56

const leaves = ({ branches }: Branch): number =>
  branches.length === 0 ? 1 : branches.reduce((sum, branch) => sum + leaves(branch), 0)

/** Widest thing of each column. */
function columns(branches: readonly Branch[], widths: number[] = [], depth = 0): number[] {
  for (const { width_px, branches: below } of branches) {
    widths[depth] = Math.max(widths[depth] ?? 0, width_px)
    columns(below, widths, depth + 1)
  }
  return widths
}

interface Half {
  side: 'left' | 'right'
  /** distance of each column from the first node [px] */
  starts: number[]
  places: Map<string, Placed>
  row: number
}

/** Rows from above to below: what has branches stands in the middle of them. @returns its row */
function assignRows(half: Half, branch: Branch, depth: number): number {
  const rows = branch.branches.map((below) => assignRows(half, below, depth + 1))
  const row = rows.length === 0 ? half.row++ : ((rows[0] ?? 0) + (rows.at(-1) ?? 0)) / 2
  const x = half.starts[depth] ?? 0
  half.places.set(branch.key, { x: half.side === 'right' ? x : -x, y: row, side: half.side })
  return row
}

function placeHalf(side: Half['side'], branches: readonly Branch[], places: Map<string, Placed>): number {
  const widths = columns(branches)
  const starts = widths.map((_width, depth) =>
    widths.slice(0, depth).reduce((sum, width) => sum + width + COLUMN_GAP_PX, FIRST_GAP_PX),
  )
  const half: Half = { side, starts, places: new Map(), row: 0 }
  for (const branch of branches) {
    assignRows(half, branch, 0)
    half.row += GROUP_GAP
  }
  const rows = half.row - GROUP_GAP
  for (const [key, place] of half.places) places.set(key, { ...place, y: (place.y - (rows - 1) / 2) * ROW_PX })
  return rows
}

/** Branches in their order, cut where both parts are most alike in height; a single branch stands to the right. */
function halves(branches: readonly Branch[]): [Branch[], Branch[]] {
  const heights = branches.map(leaves)
  const all = heights.reduce((sum, height) => sum + height, 0)
  let [cut, least, taken] = [branches.length, all, 0]
  for (const [at, height] of heights.entries()) {
    taken += height
    const apart = Math.abs(all - 2 * taken)
    if (apart < least) [cut, least] = [at + 1, apart]
  }
  return [branches.slice(0, cut), branches.slice(cut)]
}

/** The first node in the middle, its groups to both sides of it: no two labels of one side stand in the same row. */
export function twoSided(root: Branch): Layout {
  const places = new Map<string, Placed>([[root.key, { x: 0, y: 0, side: 'middle' }]])
  const [right, left] = halves(root.branches)
  const rows = Math.max(1, placeHalf('right', right, places), placeHalf('left', left, places))
  return { places, height_px: rows * ROW_PX }
}

/** One thing a row, indented by its depth: for a narrow drawing. */
export function indented(root: Branch): Layout {
  const places = new Map<string, Placed>()
  const put = (branch: Branch, depth: number): void => {
    places.set(branch.key, { x: depth * INDENT_PX, y: places.size * ROW_PX, side: 'right' })
    for (const below of branch.branches) put(below, depth + 1)
  }
  put(root, 0)
  return { places, height_px: places.size * ROW_PX }
}
