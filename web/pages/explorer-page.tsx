import { useMemo, useState } from 'react'
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { useGraphParts, useWholeGraph } from '#web/client/use-graph.ts'
import { plainLabel } from '#web/client/use-labels.ts'
import { useTitle } from '#web/client/use-title.ts'
import { exploreHref } from '#web/explorer/address.ts'
import { Filters } from '#web/explorer/filters.tsx'
import { nodeHeld } from '#web/explorer/holds.ts'
import { nodeName } from '#web/explorer/names.ts'
import { Neighbourhood } from '#web/explorer/neighbourhood.tsx'
import { Search } from '#web/explorer/search.tsx'
import { openNodes, rootOf, toggled } from '#web/explorer/state.ts'
import type { ExplorerState } from '#web/explorer/state.ts'
import { buildTree, groupsIn, nodesIn } from '#web/explorer/tree.ts'
import { useExplorer } from '#web/explorer/use-explorer.ts'
import type { Change } from '#web/explorer/use-explorer.ts'
import { selectWhole } from '#web/explorer/whole.ts'
import { Whole } from '#web/explorer/whole-graph.tsx'
import { Way } from '#web/explorer/way.tsx'
import { Choice } from '#web/parts/choice.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { explorer as T } from '#web/text/explorer.ts'
import '#web/styles/explorer.css'
import '#web/styles/explorer-list.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

interface PartProps {
  state: ExplorerState
  change: Change
  onMiddle: (id: string) => void
  /** search and choice of view, below the title */
  children: ReactNode
}

/** A node in the middle, or a way, with what is opened around it. */
function Around({ state, change, onMiddle, children, root: asked }: PartProps & { root: string }) {
  const { way, full, relations } = state
  const onWay = way.flatMap(({ from, to }) => [from, to])
  const open = openNodes(state)
  const ids = [...new Set([...open, ...onWay])]
  const parts = useGraphParts(ids, relations.includes('holds-with'))
  const root = useMemo(
    () => buildTree({ root: asked, way, parts: parts.ready, open, loading: parts.loading, relations, full }),
    [asked, JSON.stringify([way, open, relations, full, parts.loading]), [...parts.ready.keys()].join()],
  )
  const [picked, setPicked] = useState<string | null>(null)
  const chosen = picked ?? root.key
  const nodes = nodesIn(root)
  const names = new Map(
    [...parts.ready.values()].flatMap((part) => part.nodes.map((node) => [node.id, nodeName(node)])),
  )
  const nameOf = (id: string): string => names.get(id) ?? plainLabel(id)
  const title = way.length > 0 ? T.titleWay : T.titleOf(nameOf(root.node.id))
  useTitle(title)
  const onAct = (key: string) => {
    if (key.endsWith('>more')) change({ full: toggled(full, key.slice(0, -'>more'.length)) })
    else if (way.length > 0 || key !== root.key) change({ open: toggled(state.open, key) })
  }
  const rest = groupsIn(root).flatMap(({ members }) => members).length
  return (
    <>
      <h1>{title}</h1>
      {children}
      {way.length > 0 && (
        <Way way={way} nameOf={nameOf} onChoose={setPicked} onLeave={() => onMiddle(way[0]?.from ?? asked)} />
      )}
      <Filters state={state} states={nodes.map(({ node }) => nodeHeld(node, state).state)} onChange={change} />
      {parts.failed.map((failure) => (
        <Failed key={failure.id} failure={{ state: 'failed', ...failure }} />
      ))}
      {parts.ready.size === 0 && parts.loading.length > 0 && <Loading>{T.loading}</Loading>}
      <p role="status" className="remark">
        {parts.loading.length > 0 ? T.loading : T.status(nodes.length, rest)}
      </p>
      {parts.ready.size > 0 && (
        <Spoken by="GET /api/graph">
          <InEnglish by="GET /api/graph" />
          <Neighbourhood
            state={state}
            root={root}
            chosen={chosen}
            onChoose={setPicked}
            onAct={onAct}
            onMiddle={onMiddle}
          />
        </Spoken>
      )}
    </>
  )
}

function All({ state, change, onMiddle, children }: PartProps) {
  useTitle(T.titleWhole)
  const reply = useWholeGraph(true)
  const whole = reply.state === 'ready' ? reply.data : null
  const { relations, whole: size } = state
  const selection = useMemo(
    () => (whole ? selectWhole(whole, size ?? 0, relations) : null),
    [whole, size, relations.join()],
  )
  const [chosen, setChosen] = useState<string | null>(null)
  const states = selection?.nodes.map((node) => nodeHeld(node, state).state) ?? []
  return (
    <>
      <h1>{T.titleWhole}</h1>
      {children}
      <Filters state={state} states={states} onChange={change} />
      {reply.state === 'failed' && <Failed failure={reply} />}
      {reply.state === 'loading' && <Loading>{T.loadingWhole}</Loading>}
      {whole && selection && (
        <Whole
          whole={whole}
          selection={selection}
          state={state}
          change={change}
          chosen={chosen}
          onChoose={setChosen}
          onMiddle={onMiddle}
        />
      )}
    </>
  )
}

function Start({ children }: Pick<PartProps, 'children'>) {
  useTitle(T.title)
  return (
    <>
      <h1>{T.title}</h1>
      <p className="lead">{T.lead}</p>
      {children}
      <p>{T.start}</p>
      <ul className="chips">
        {T.starts.map((id) => (
          <li key={id}>
            <Link href={exploreHref(id)}>{T.startRoles[id] ?? plainLabel(id)}</Link>
          </li>
        ))}
      </ul>
    </>
  )
}

/** The graph to look around in: a node and its neighbours, the way of a swap, or all. */
export function ExplorerPage() {
  const { state, change } = useExplorer()
  const root = rootOf(state)
  const onMiddle = (id: string) => change({ at: id, way: [], open: [], full: [], whole: null }, true)
  const isShown = state.whole !== null || root !== null
  const top = (
    <div className="card explorer-top">
      <Search onFind={onMiddle} />
      {isShown && (
        <Choice
          legend={T.view}
          name="view"
          value={state.view}
          choices={T.views}
          onChange={(view) => change({ view })}
        />
      )}
      {state.whole === null && (
        <button type="button" onClick={() => change({ whole: 500, at: null, way: [], open: [], full: [] }, true)}>
          {T.whole.open}
        </button>
      )}
    </div>
  )
  const shared = { state, change, onMiddle, children: top }
  return (
    <div className="page explorer">
      {state.whole !== null && <All {...shared} />}
      {state.whole === null && root !== null && <Around key={root} root={root} {...shared} />}
      {!isShown && <Start>{top}</Start>}
    </div>
  )
}
