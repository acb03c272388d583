import { edgeHeld, nodeHeld, together } from './holds.ts'
import type { Conditions } from './holds.ts'
import { indented, twoSided } from './layout.ts'
import type { Branch } from './layout.ts'
import { nodeName, relationWords } from './names.ts'
import type { Scene, SceneEdge, SceneNode } from './scene.ts'
import { groupsIn, nodesIn } from './tree.ts'
import type { GroupItem, NodeItem } from './tree.ts'
import { moreKey } from './outline.ts'
import { explorer as T } from '#web/text/explorer.ts'

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

/**
 * In an indented drawing lines go down and then to the right, round a corner: straight ones would lie upon one another.
 * A line to a mark that stands elsewhere stays straight.
 */
function withCorners({ nodes, edges }: Pick<Scene, 'nodes' | 'edges'>): Pick<Scene, 'nodes' | 'edges'> {
  const byKey = new Map(nodes.map((node) => [node.key, node]))
  const corners: SceneNode[] = []
  const lines = edges.flatMap((edge): SceneEdge[] => {
    const [from, to] = [byKey.get(edge.from), byKey.get(edge.to)]
    if (!from || !to || edge.isAgain) return [edge]
    const key = `corner ${edge.key}`
    const at = { x: from.x, y: to.y, side: 'right' as const, label: '', size: 1 }
    corners.push({ ...PLAIN, ...at, key, shape: 'words' })
    return [
      { ...edge, key: `${edge.key} down`, to: key },
      { ...edge, key: `${edge.key} across`, from: key },
    ]
  })
  return { nodes: [...nodes, ...corners], edges: lines }
}

/** How high the way of a swap rises between its ends [px]. */
const ARCH_PX = 64

/** A way is drawn as an arch, so that a line from its end back to its beginning is seen. */
function arched(scene: Pick<Scene, 'nodes' | 'edges'>): Pick<Scene, 'nodes' | 'edges'> {
  const end = Math.max(1, ...scene.nodes.filter(({ isOnWay }) => isOnWay).map(({ x }) => x))
  const rise = (x: number): number => (x > 0 && x < end ? ARCH_PX * Math.sin((Math.PI * x) / end) : 0)
  return { ...scene, nodes: scene.nodes.map((node) => ({ ...node, y: node.y - rise(node.x) })) }
}

/** The tree as a drawing: in two halves, or indented where there is little room. */
export function sceneOfTree(root: NodeItem, asked: Conditions, isNarrow: boolean): Scene {
  const { places, height_px } = (isNarrow ? indented : twoSided)(branchOfNode(root))
  const placeOf = (key: string): Place => places.get(key) ?? { x: 0, y: 0, side: 'right' }
  const groups = groupsIn(root)
  const plain = {
    nodes: [
      ...nodesIn(root).map((item) => nodeMark(item, root, placeOf(item.key), asked)),
      ...groups.flatMap((group) => groupMarks(group, placeOf)),
    ],
    edges: groups.flatMap((group) => groupLines(group, asked)),
  }
  const drawn = isNarrow ? withCorners(plain) : root.isOnWay ? arched(plain) : plain
  return { ...drawn, isTrueSize: true, labelsFrom_px: 0, height_px }
}
