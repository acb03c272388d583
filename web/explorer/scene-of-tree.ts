import { edgeHeld, nodeHeld, together } from './holds.ts'
import type { Conditions } from './holds.ts'
import { indented, twoSided } from './layout.ts'
import type { Branch } from './layout.ts'
import { nodeName, relationWords } from './names.ts'
import type { Scene, SceneEdge, SceneNode } from './scene.ts'
import { groupsIn, nodesIn } from './tree.ts'
import type { GroupItem, NodeItem } from './tree.ts'
import { moreKey } from './outline.ts'
import { explorer as T } from '#web/text/en-explorer.ts'

/** Width of a sign of the labels [px], on the safe side of what is drawn. */
const SIGN_PX = 6.8
const MARK_PX = 26
export const LONGEST_LABEL = 30
export const NODE_PX = 8
const FIRST_PX = 11
const MORE_PX = 5

/** A label of bearable length. */
export const shortLabel = (label: string, most = LONGEST_LABEL): string =>
  label.length > most ? `${label.slice(0, most - 1).trimEnd()}…` : label

const room = (label: string): number => MARK_PX + label.length * SIGN_PX
const wordsOf = ({ relation, direction }: GroupItem): string => relationWords(relation, direction)

function branchOfGroup(group: GroupItem): Branch {
  const own = group.members.filter(({ isAgain }) => !isAgain).map(branchOfNode)
  const rest = group.more > 0 ? [{ key: moreKey(group.key), width_px: room(T.more(group.more)), branches: [] }] : []
  return { key: group.key, width_px: room(wordsOf(group)), branches: [...own, ...rest] }
}

/** A group whose members all stand elsewhere takes a row too: its words tell what joins them. */
const branchOfNode = ({ key, node, groups }: NodeItem): Branch => ({
  key,
  width_px: room(shortLabel(nodeName(node))),
  branches: groups.map(branchOfGroup),
})

type Place = Pick<SceneNode, 'x' | 'y' | 'side'>

function nodeMark(item: NodeItem, root: NodeItem, place: Place, asked: Conditions): SceneNode {
  const { state } = item.edges.map((edge) => edgeHeld(edge, asked)).reduce(together, nodeHeld(item.node, asked))
  return {
    key: item.key,
    shape: item.node.kind,
    ...place,
    size: item === root ? FIRST_PX : NODE_PX,
    label: shortLabel(nodeName(item.node)),
    holding: state,
    isOnWay: item.isOnWay,
    isOpen: item.isOpen,
  }
}

const PLAIN = { holding: 'none', isOnWay: false, isOpen: false } as const

function groupMarks(group: GroupItem, placeOf: (key: string) => Place): SceneNode[] {
  const words: SceneNode = {
    ...PLAIN,
    key: group.key,
    shape: 'words',
    ...placeOf(group.key),
    size: 3,
    label: wordsOf(group),
    isOnWay: group.members.some(({ isOnWay }) => isOnWay),
  }
  if (group.more === 0) return [words]
  const key = moreKey(group.key)
  return [words, { ...PLAIN, key, shape: 'more', ...placeOf(key), size: MORE_PX, label: T.more(group.more) }]
}

function groupLines(group: GroupItem, asked: Conditions): SceneEdge[] {
  const { key, of, relation } = group
  const isOnWay = group.members.some((one) => one.isOnWay)
  const plain = { relation, holding: 'none' as const, isAgain: false }
  const toMembers = group.members.map((member): SceneEdge => {
    const { state } = member.edges.map((edge) => edgeHeld(edge, asked)).reduce(together, nodeHeld(member.node, asked))
    const to = member.node.id
    return {
      key: `${key}>${to}`,
      from: key,
      to,
      relation,
      holding: state,
      isOnWay: member.isOnWay,
      isAgain: member.isAgain,
    }
  })
  const toRest = group.more > 0 ? [{ ...plain, key: `${key}>more`, from: key, to: moreKey(key), isOnWay: false }] : []
  return [{ ...plain, key: `${of}>${key}`, from: of, to: key, isOnWay }, ...toMembers, ...toRest]
}

/** The tree as a drawing: in two halves, or indented where there is little room. */
export function sceneOfTree(root: NodeItem, asked: Conditions, isNarrow: boolean): Scene {
  const { places, height_px } = (isNarrow ? indented : twoSided)(branchOfNode(root))
  const placeOf = (key: string): Place => places.get(key) ?? { x: 0, y: 0, side: 'right' }
  const groups = groupsIn(root)
  return {
    nodes: [
      ...nodesIn(root).map((item) => nodeMark(item, root, placeOf(item.key), asked)),
      ...groups.flatMap((group) => groupMarks(group, placeOf)),
    ],
    edges: groups.flatMap((group) => groupLines(group, asked)),
    isTrueSize: true,
    height_px,
  }
}
