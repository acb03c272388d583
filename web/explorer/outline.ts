import type { GroupItem, NodeItem } from './tree.ts'

/** Where a row stands: how deep, and which of how many beside it. */
export interface Place {
  key: string
  level: number
  place: number
  of: number
}

/** One row of the outline: a node, a relation, or what shows the rest of a group. */
export type Row =
  | (Place & { kind: 'node'; item: NodeItem; isUnfolded: boolean | null })
  | (Place & { kind: 'group'; item: GroupItem; isUnfolded: boolean })
  | (Place & { kind: 'more'; item: GroupItem; isUnfolded: null })

/** Key of the row that shows the rest of a group. */
export const moreKey = (group: string): string => `${group}>more`

function rowsOfGroup(item: GroupItem, level: number, place: [number, number], folded: ReadonlySet<string>): Row[] {
  const isUnfolded = !folded.has(item.key)
  const head: Row = { kind: 'group', key: item.key, level, place: place[0], of: place[1], item, isUnfolded }
  if (!isUnfolded) return [head]
  const of = item.members.length + (item.more > 0 ? 1 : 0)
  const below = item.members.flatMap((member, at) => rowsOfNode(member, level + 1, [at + 1, of], folded))
  if (item.more === 0) return [head, ...below]
  return [
    head,
    ...below,
    { kind: 'more', key: moreKey(item.key), level: level + 1, place: of, of, item, isUnfolded: null },
  ]
}

function rowsOfNode(item: NodeItem, level: number, place: [number, number], folded: ReadonlySet<string>): Row[] {
  // A node that is named again stands open in its own place; one without relations has nothing to unfold.
  const canUnfold = !item.isAgain && (item.node.links > 0 || item.groups.length > 0)
  const isUnfolded = canUnfold ? item.groups.length > 0 : null
  const head: Row = { kind: 'node', key: item.key, level, place: place[0], of: place[1], item, isUnfolded }
  const of = item.groups.length
  return [head, ...item.groups.flatMap((group, at) => rowsOfGroup(group, level + 1, [at + 1, of], folded))]
}

/** The rows of the outline that can be seen, in reading order. @param folded keys of relations that are folded */
export const outlineRows = (root: NodeItem, folded: ReadonlySet<string>): Row[] => rowsOfNode(root, 1, [1, 1], folded)

export type Move = 'up' | 'down' | 'first' | 'last' | 'parent' | 'child'

/** The row that a key press leads to; the same one where there is none. */
export function rowAfter(rows: readonly Place[], key: string, move: Move): string {
  const at = rows.findIndex((row) => row.key === key)
  const row = rows[at]
  if (!row) return rows[0]?.key ?? key
  const below = rows[at + 1]
  const to = {
    up: rows[at - 1],
    down: below,
    first: rows[0],
    last: rows.at(-1),
    parent: rows.slice(0, at).findLast(({ level }) => level === row.level - 1),
    child: below && below.level === row.level + 1 ? below : undefined,
  }[move]
  return to?.key ?? key
}

/** The next row whose name begins as typed, from the one after this and round again. */
export function rowByLetters<R extends Place>(
  rows: readonly R[],
  key: string,
  typed: string,
  nameOf: (row: R) => string,
): string {
  const at = rows.findIndex((row) => row.key === key)
  const start = typed.length > 1 ? at : at + 1
  const order = [...rows.slice(start), ...rows.slice(0, start)]
  return order.find((row) => nameOf(row).toLowerCase().startsWith(typed.toLowerCase()))?.key ?? key
}
