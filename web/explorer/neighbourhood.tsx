import { lazy, Suspense, useMemo } from 'react'
import { useWidth } from '#web/client/use-width.ts'
import { Loading } from '#web/parts/states.tsx'
import { explorer } from '#web/text/explorer.ts'
import { Detail } from './detail.tsx'
import type { Conditions } from './holds.ts'
import { Legend } from './legend.tsx'
import { sceneOfTree } from './scene-of-tree.ts'
import type { ExplorerState } from './state.ts'
import { statementsOf } from './statements.ts'
import { groupsIn, nodesIn } from './tree.ts'
import type { NodeItem } from './tree.ts'
import { TreeOutline } from './tree-outline.tsx'
import { TreeTable } from './tree-table.tsx'

// The drawing library comes in a file of its own, when a drawing is asked for.
const DrawingView = lazy(() => import('./drawing/drawing-view.tsx').then((view) => ({ default: view.DrawingView })))

/** Narrower than this a drawing has one thing a row [px]. */
const NARROW_PX = 640
const HEIGHT_PX = { least: 340, most: 760, narrow: 520, margin: 90 }

interface Props {
  state: ExplorerState
  root: NodeItem
  chosen: string | null
  onChoose: (key: string | null) => void
  /** opens, closes, or shows the rest of a group */
  onAct: (key: string) => void
  onMiddle: (id: string) => void
}

function Drawn({ root, asked, chosen, onChoose, onAct }: Omit<Props, 'state' | 'onMiddle'> & { asked: Conditions }) {
  const [box, width_px] = useWidth<HTMLDivElement>(900)
  const isNarrow = width_px < NARROW_PX
  const scene = useMemo(() => {
    const { height_px, ...rest } = sceneOfTree(root, asked, isNarrow)
    const most = isNarrow ? HEIGHT_PX.narrow : HEIGHT_PX.most
    return { ...rest, height_px: Math.min(most, Math.max(HEIGHT_PX.least, height_px + HEIGHT_PX.margin)) }
  }, [root, asked.ph, asked.heat_c, isNarrow])
  return (
    <div ref={box}>
      <Suspense fallback={<Loading>{explorer.loadingDrawing}</Loading>}>
        <DrawingView scene={scene} chosen={chosen} onChoose={onChoose} onAct={onAct} />
      </Suspense>
    </div>
  )
}

/** What lies around a node or a way: as a drawing, a table or an outline, and what is known of the chosen one. */
export function Neighbourhood({ state, root, chosen, onChoose, onAct, onMiddle }: Props) {
  const { view, ph, heat_c, way } = state
  const asked = { ph, heat_c }
  const all = nodesIn(root)
  const item = all.find(({ key }) => key === chosen) ?? all.find(({ node }) => chosen?.endsWith(`>${node.id}`))
  const hasMore = groupsIn(root).some(({ more }) => more > 0)
  const views = {
    drawing: <Drawn root={root} asked={asked} chosen={chosen} onChoose={onChoose} onAct={onAct} />,
    table: <TreeTable root={root} asked={asked} onAct={onAct} />,
    outline: <TreeOutline root={root} asked={asked} chosen={chosen} onChoose={onChoose} onAct={onAct} />,
  }
  const canAct = item !== undefined && (item.isOpen || item.node.links > 0) && item !== (way.length > 0 ? null : root)
  return (
    <div className="explorer-body" data-view={view}>
      <div className="card explorer-main">
        {view !== 'table' && (
          <Legend isAsked={ph !== null || heat_c !== null} isWay={way.length > 0} hasMore={hasMore} />
        )}
        {views[view]}
      </div>
      {view !== 'table' && (
        <Detail
          node={item?.node ?? null}
          asked={asked}
          statements={item ? statementsOf(root, item.node.id) : []}
          isOpen={canAct ? item.isOpen : null}
          onAct={() => item && onAct(item.node.id)}
          {...(item && item !== (way.length > 0 ? null : root) && { onMiddle: () => onMiddle(item.node.id) })}
        />
      )}
    </div>
  )
}
