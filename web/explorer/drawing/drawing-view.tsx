import { useEffect, useId, useRef, useState } from 'react'
import type { KeyboardEvent } from 'react'
import { isNode, nodeToThe } from '#web/explorer/scene.ts'
import type { Scene, Side } from '#web/explorer/scene.ts'
import { explorer } from '#web/text/explorer.ts'
import { Drawing } from './drawing.ts'

const T = explorer.drawing

interface Props {
  scene: Scene
  chosen: string | null
  onChoose: (key: string | null) => void
  /** Enter or a second click: open, close, or show the rest */
  onAct: (key: string) => void
}

const SIDES: Readonly<Record<string, Side>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
}

/** The plain wheel scrolls the page; with Ctrl it zooms the drawing. */
function leaveWheel(event: WheelEvent): void {
  if (!event.ctrlKey && !event.metaKey) event.stopPropagation()
}

/** Keeps one drawing for a container: made when it can be, shown anew when the scene changes. */
function useDrawing({ scene, chosen, onChoose, onAct }: Props) {
  const container = useRef<HTMLDivElement>(null)
  const drawing = useRef<Drawing | null>(null)
  const [failed, setFailed] = useState(false)
  const latest = useRef({ scene, chosen, onChoose, onAct })
  latest.current = { scene, chosen, onChoose, onAct }
  const { isTrueSize } = scene
  const first = scene.nodes[0]?.key
  useEffect(() => {
    const element = container.current
    if (!element) return
    const onPick = (key: string | null) => {
      const { scene: now, chosen: before } = latest.current
      const node = now.nodes.find((one) => one.key === key)
      if (node && !isNode(node)) return // the words of a relation are no mark
      const isOpen = node?.isOpen ?? false
      latest.current.onChoose(key)
      // An open mark is closed by a second click only: the first says that it is to be looked at.
      if (key !== null && now.isTrueSize && (!isOpen || key === before)) latest.current.onAct(key)
    }
    let made: Drawing
    try {
      made = new Drawing(element, scene, { onPick })
    } catch {
      setFailed(true)
      return
    }
    drawing.current = made
    made.choose(latest.current.chosen)
    const dark = window.matchMedia('(prefers-color-scheme: dark)')
    const recolour = () => made.recolour()
    const watch = new ResizeObserver(() => made.resize())
    dark.addEventListener('change', recolour)
    watch.observe(element)
    element.addEventListener('wheel', leaveWheel, { capture: true })
    return () => {
      dark.removeEventListener('change', recolour)
      watch.disconnect()
      element.removeEventListener('wheel', leaveWheel, { capture: true })
      made.kill()
      drawing.current = null
    }
    // Another first node or another kind of scene is another drawing; a changed scene is shown below.
  }, [isTrueSize, first])
  useEffect(() => drawing.current?.show(scene), [scene])
  useEffect(() => drawing.current?.choose(chosen), [chosen, scene])
  return { container, drawing, failed }
}

/** The drawing with its keys and buttons. */
export function DrawingView(props: Props) {
  const { scene, chosen, onChoose, onAct } = props
  const { container, drawing, failed } = useDrawing(props)
  const helpId = useId()
  const onKey = (event: KeyboardEvent) => {
    const side = SIDES[event.key]
    const marks = scene.nodes.filter(isNode)
    const from = marks.find(({ key }) => key === chosen)
    if (side) onChoose((from && nodeToThe(side, from, marks)) ?? from?.key ?? marks[0]?.key ?? null)
    else if (event.key === 'Enter' && chosen !== null) onAct(chosen)
    else if (event.key === '+' || event.key === '=') drawing.current?.zoom(true)
    else if (event.key === '-') drawing.current?.zoom(false)
    else if (event.key === '0') drawing.current?.fit()
    else return
    event.preventDefault()
  }
  if (failed) return <p role="alert">{T.failed}</p>
  return (
    <div className="explorer-drawing">
      <div
        ref={container}
        className="explorer-canvas"
        style={{ height: scene.height_px }}
        role="application"
        aria-label={T.label}
        aria-describedby={helpId}
        tabIndex={0}
        onKeyDown={onKey}
      />
      <div className="explorer-tools">
        <button type="button" aria-label={T.zoomIn} onClick={() => drawing.current?.zoom(true)}>
          +
        </button>
        <button type="button" aria-label={T.zoomOut} onClick={() => drawing.current?.zoom(false)}>
          −
        </button>
        <button type="button" onClick={() => drawing.current?.fit()}>
          {T.fit}
        </button>
      </div>
      <p id={helpId} className="remark">
        {T.help} {T.wheel}
      </p>
    </div>
  )
}
