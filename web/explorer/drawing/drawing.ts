import Sigma from 'sigma'
import { EdgeLineProgram, EdgeRectangleProgram } from 'sigma/rendering'
import type { CameraState } from 'sigma/types'
import { LONGEST_LABEL } from '#web/explorer/scene-of-tree.ts'
import type { Scene } from '#web/explorer/scene.ts'
import { frameOf, shiftInto, startOf } from './frame.ts'
import { graphOfScene } from './graph-of-scene.ts'
import { Labels } from './labels.ts'
import { markProgram } from './mark-program.ts'
import { readPalette } from './palette.ts'

/** Radius within which a pointer finds a mark [px]: 24 px across for a finger, less where marks stand close. */
const LEAST_PX = { tree: 12, whole: 5 }
/** Room for labels at the edge of the drawing [px]. */
const EDGE_PX = { x: 200, y: 24 }
const ZOOM = 1.5
const MOVE_MS = 250
/** From here on edges are left out while the drawing moves. */
const MANY_EDGES = 400

export interface Listener {
  /** a mark or its label was clicked; null: the ground */
  onPick: (key: string | null) => void
}

const isCalm = (): boolean => window.matchMedia('(prefers-reduced-motion: reduce)').matches

/** A scene on the screen. All settings of the drawing library stand here. */
export class Drawing {
  private readonly sigma: Sigma
  private readonly labels: Labels
  private palette = readPalette()
  private chosen: string | null = null

  constructor(
    private readonly container: HTMLElement,
    private scene: Scene,
    listener: Listener,
  ) {
    this.labels = new Labels(() => this.palette)
    const { isTrueSize, edges } = scene
    this.sigma = new Sigma(graphOfScene(scene, this.palette), container, {
      allowInvalidContainer: true,
      nodeProgramClasses: { mark: markProgram(isTrueSize ? LEAST_PX.tree : LEAST_PX.whole) },
      edgeProgramClasses: { line: EdgeLineProgram, bar: EdgeRectangleProgram },
      defaultDrawNodeLabel: this.labels.draw,
      defaultDrawNodeHover: this.labels.drawChosen,
      nodeReducer: (key, data) => this.reduceNode(key, data),
      edgeReducer: (key, data) => this.reduceEdge(key, data),
      stagePadding: 0,
      labelDensity: isTrueSize ? 1000 : 1,
      labelGridCellSize: isTrueSize ? 400 : 110,
      labelRenderedSizeThreshold: scene.labelsFrom_px,
      hideEdgesOnMove: edges.length > MANY_EDGES,
      hideLabelsOnMove: !isTrueSize,
      zIndex: true,
      minCameraRatio: 0.02,
      maxCameraRatio: 8,
      enableCameraRotation: false,
      zoomDuration: isCalm() ? 1 : MOVE_MS,
      inertiaDuration: isCalm() ? 0 : MOVE_MS,
    })
    this.sigma.on('beforeRender', () => this.labels.clear())
    this.sigma.on('clickNode', ({ node }) => listener.onPick(node))
    this.sigma.on('clickStage', ({ event }) => listener.onPick(this.labels.at(event)))
    this.sigma.on('doubleClickNode', (event) => event.preventSigmaDefault())
    this.sigma.on('doubleClickStage', (event) => event.preventSigmaDefault())
    this.lookAwayWhileDragging()
    this.frame()
    this.move(startOf(this.scene, this.size(), LONGEST_LABEL), false)
  }

  /** To find the mark under the pointer the library waits for the picture to be finished; while it is dragged nobody asks. */
  private lookAwayWhileDragging(): void {
    const captor = this.sigma.getMouseCaptor()
    const looking = captor.listeners('mousemove')
    captor.on('mousedown', () => captor.removeAllListeners('mousemove'))
    captor.on('mouseup', () => {
      captor.removeAllListeners('mousemove')
      for (const listener of looking) captor.on('mousemove', listener)
    })
  }

  private size() {
    return { width: this.container.clientWidth, height: this.container.clientHeight }
  }

  /** Ties the units of the scene to pixels. */
  private frame(): void {
    this.sigma.setCustomBBox(frameOf(this.scene, this.size()))
    this.sigma.refresh()
  }

  private move(state: Partial<CameraState>, isSlow = true): void {
    const camera = this.sigma.getCamera()
    if (isSlow && !isCalm()) void camera.animate(state, { duration: MOVE_MS })
    else camera.setState(state)
  }

  private nearChosen(key: string): boolean {
    return this.chosen !== null && this.sigma.getGraph().areNeighbors(this.chosen, key)
  }

  private reduceNode(key: string, data: Record<string, unknown>) {
    if (key === this.chosen) return { ...data, highlighted: true, forceLabel: true, zIndex: 2 }
    if (this.scene.isTrueSize || this.chosen === null) return data
    if (this.nearChosen(key)) return { ...data, forceLabel: true, mayHide: true, zIndex: 1 }
    const [color, line] = [data['color'], data['line']].map((one) => this.palette.faded(String(one)))
    return { ...data, color, line, label: '' }
  }

  /** In the whole graph only what joins the chosen one is drawn while one is chosen. */
  private reduceEdge(key: string, data: Record<string, unknown>) {
    if (this.scene.isTrueSize || this.chosen === null) return data
    return this.sigma.getGraph().hasExtremity(key, this.chosen)
      ? { ...data, color: this.palette.ink }
      : { ...data, hidden: true }
  }

  /** Shows another scene; what was chosen stays where it is on the screen. */
  show(scene: Scene): void {
    const before = this.chosen === null ? undefined : this.sigma.getNodeDisplayData(this.chosen)
    const old = before && { x: before.x, y: before.y }
    this.scene = scene
    const graph = graphOfScene(scene, this.palette)
    if (this.chosen !== null && !graph.hasNode(this.chosen)) this.chosen = null
    this.sigma.setSetting('labelRenderedSizeThreshold', scene.labelsFrom_px)
    this.sigma.setSetting('hideEdgesOnMove', scene.edges.length > MANY_EDGES)
    this.sigma.setGraph(graph)
    this.frame()
    const now = this.chosen === null ? undefined : this.sigma.getNodeDisplayData(this.chosen)
    const { x, y } = this.sigma.getCamera().getState()
    if (old && now) this.move({ x: x + now.x - old.x, y: y + now.y - old.y }, false)
  }

  choose(key: string | null): void {
    this.chosen = key !== null && this.sigma.getGraph().hasNode(key) ? key : null
    this.sigma.refresh({ skipIndexation: true })
    if (this.chosen !== null) this.bringIn(this.chosen)
  }

  /** Moves the drawing no farther than it must for the mark and what hangs on it to be seen; the mark itself stays inside. */
  private bringIn(key: string): void {
    const data = this.sigma.getNodeDisplayData(key)
    if (!data) return
    const graph = this.sigma.getGraph()
    const below = this.scene.isTrueSize
      ? graph.neighbors(key).flatMap((words) => [words, ...graph.neighbors(words)])
      : []
    const at = (node: string) => this.sigma.framedGraphToViewport(this.sigma.getNodeDisplayData(node) ?? data)
    const [own, ...others] = [key, ...(this.isOpened(key) ? below : [])].map(at)
    if (!own) return
    const { width, height } = this.size()
    const shift = {
      x: shiftInto(
        own.x,
        others.map(({ x }) => x),
        { from: EDGE_PX.x, to: width - EDGE_PX.x },
      ),
      y: shiftInto(
        own.y,
        others.map(({ y }) => y),
        { from: EDGE_PX.y, to: height - EDGE_PX.y },
      ),
    }
    if (shift.x === 0 && shift.y === 0) return
    const { x, y } = this.sigma.getCamera().getState()
    const [here, there] = [{ x: 0, y: 0 }, shift].map((point) => this.sigma.viewportToFramedGraph(point))
    if (here && there) this.move({ x: x + there.x - here.x, y: y + there.y - here.y })
  }

  private isOpened(key: string): boolean {
    const [first] = this.scene.nodes
    return first?.key !== key && (this.scene.nodes.find((node) => node.key === key)?.isOpen ?? false)
  }

  zoom(isNearer: boolean): void {
    const camera = this.sigma.getCamera()
    this.move({ ratio: camera.getBoundedRatio(camera.getState().ratio * (isNearer ? 1 / ZOOM : ZOOM)) })
  }

  fit(): void {
    this.move(startOf(this.scene, this.size(), LONGEST_LABEL, true))
  }

  /** After a change of size. */
  resize(): void {
    this.sigma.resize()
    this.frame()
  }

  /** After a change from light to dark. */
  recolour(): void {
    this.palette = readPalette()
    this.show(this.scene)
  }

  kill(): void {
    this.sigma.kill()
  }
}
