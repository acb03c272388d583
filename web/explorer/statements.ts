import type { GraphEdge } from '#web/client/use-graph.ts'
import { saysOf, seenOf } from './edge-words.ts'
import { nodeName, relationWords } from './names.ts'
import type { Direction } from './relations.ts'
import { groupsIn } from './tree.ts'
import type { NodeItem } from './tree.ts'
import type { Selection } from './whole.ts'

/** One thing that is stated of a node: words, and what stands behind them. */
export interface Statement {
  key: string
  words: string
  says: string
  seen: string
}

/** A row of the table: two nodes and the edges between them. */
export interface Joined {
  key: string
  from: NodeItem
  relation: string
  direction: Direction
  to: NodeItem
}

/** Every pair that the tree joins, in its order. */
export function joinedIn(root: NodeItem): Joined[] {
  const byId = new Map<string, NodeItem>()
  const collect = (item: NodeItem): void => {
    if (!item.isAgain) byId.set(item.node.id, item)
    for (const { members } of item.groups) members.forEach(collect)
  }
  collect(root)
  return groupsIn(root).flatMap(({ key, of, relation, direction, members }) => {
    const from = byId.get(of)
    return from ? members.map((to) => ({ key: `${key}>${to.node.id}`, from, relation, direction, to })) : []
  })
}

const wordsOf = (from: string, edge: Pick<GraphEdge, 'relation'>, direction: Direction, to: string): string =>
  `${from} ${relationWords(edge.relation, direction)} ${to}`

/** What the tree states of a node, read from the node above. */
export function statementsOf(root: NodeItem, id: string): Statement[] {
  return joinedIn(root)
    .filter(({ from, to }) => from.node.id === id || to.node.id === id)
    .flatMap(({ key, from, direction, to }) =>
      to.edges.map((edge, at) => ({
        key: `${key}${at}`,
        words: wordsOf(nodeName(from.node), edge, direction, nodeName(to.node)),
        says: saysOf(edge),
        seen: seenOf(edge),
      })),
    )
}

/** What the whole graph joins a node to; what that rests on is asked of its neighbourhood. */
export const wholeStatements = ({ edges }: Selection, id: string): Statement[] =>
  edges
    .filter(({ from, to }) => from.id === id || to.id === id)
    .map(({ from, to, relation }) => ({
      key: `${from.id}>${relation}>${to.id}`,
      words: wordsOf(nodeName(from), { relation }, 'out', nodeName(to)),
      says: '',
      seen: '',
    }))
