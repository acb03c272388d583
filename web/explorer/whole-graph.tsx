import { lazy, Suspense, useId, useMemo, useState } from 'react'
import type { WholeGraph } from '#web/client/use-graph.ts'
import { useWidth } from '#web/client/use-width.ts'
import { Loading } from '#web/parts/states.tsx'
import { explorer } from '#web/text/explorer.ts'
import { Detail } from './detail.tsx'
import { Legend } from './legend.tsx'
import { WHOLE_SIZES } from './state.ts'
import type { ExplorerState } from './state.ts'
import { wholeStatements } from './statements.ts'
import type { Change } from './use-explorer.ts'
import { sceneOfWhole } from './whole.ts'
import type { Selection } from './whole.ts'
import { WholeOutline, WholeTable } from './whole-views.tsx'

const DrawingView = lazy(() => import('./drawing/drawing-view.tsx').then((view) => ({ default: view.DrawingView })))

const T = explorer.whole
/** As high as wide on a small screen, so that there is room beside it to scroll the page [px]. */
const MOST_HIGH_PX = 620

interface Props {
  whole: WholeGraph
  selection: Selection
  state: ExplorerState
  change: Change
  chosen: string | null
  onChoose: (key: string | null) => void
  onMiddle: (id: string) => void
}

/** How much of the graph is shown, and, in the lists, a part of the name. */
function Controls({
  whole,
  selection,
  state,
  change,
  words,
  onWords,
}: Omit<Props, 'chosen' | 'onChoose' | 'onMiddle'> & { words: string; onWords: (words: string) => void }) {
  const id = useId()
  return (
    <div className="row explorer-whole">
      <div className="field">
        <label htmlFor={`${id}-size`}>{T.size}</label>
        <select
          id={`${id}-size`}
          value={state.whole ?? 0}
          onChange={(event) => change({ whole: Number(event.target.value) })}
        >
          {WHOLE_SIZES.map((size) => (
            <option key={size} value={size}>
              {T.sizes(size)}
            </option>
          ))}
        </select>
      </div>
      {state.view !== 'drawing' && (
        <div className="field">
          <label htmlFor={`${id}-words`}>{T.find}</label>
          <input id={`${id}-words`} type="search" value={words} onChange={(event) => onWords(event.target.value)} />
        </div>
      )}
      <p role="status">{T.shown(selection.nodes.length, selection.edges.length, whole.nodes.length)}</p>
    </div>
  )
}

/** The whole graph, or as much of it as is asked for. */
export function Whole(props: Props) {
  const { selection, state, chosen, onChoose, onMiddle } = props
  const { view, ph, heat_c } = state
  const [words, setWords] = useState('')
  const asked = { ph, heat_c }
  const [box, width_px] = useWidth<HTMLDivElement>(900)
  const height_px = Math.min(MOST_HIGH_PX, Math.max(320, width_px))
  const scene = useMemo(
    () => sceneOfWhole(selection, asked, { width_px, height_px }),
    [selection, ph, heat_c, width_px],
  )
  const node = selection.nodes.find(({ id }) => id === chosen) ?? null
  const lists = { selection, words, asked, chosen, onChoose, onMiddle }
  return (
    <div className="explorer-body" data-view={view}>
      <div className="card explorer-main">
        <Controls {...props} words={words} onWords={setWords} />
        {view === 'drawing' && (
          <div ref={box}>
            <Legend isAsked={ph !== null || heat_c !== null} isWay={false} hasMore={false} />
            <Suspense fallback={<Loading>{explorer.loadingDrawing}</Loading>}>
              <DrawingView scene={scene} chosen={chosen} onChoose={onChoose} onAct={onMiddle} />
            </Suspense>
          </div>
        )}
        {view === 'table' && <WholeTable key={words} {...lists} />}
        {view === 'outline' && <WholeOutline {...lists} />}
      </div>
      {view !== 'table' && (
        <Detail
          node={node}
          asked={asked}
          statements={node ? wholeStatements(selection, node.id) : []}
          isOpen={null}
          onAct={() => undefined}
          onMiddle={() => node && onMiddle(node.id)}
        />
      )}
    </div>
  )
}
