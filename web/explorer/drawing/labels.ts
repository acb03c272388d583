import type { NodeLabelDrawingFunction } from 'sigma/rendering'
import type { SceneNode } from '#web/explorer/scene.ts'
import type { Palette } from './palette.ts'

/** A label where it was drawn [px], and whose it is. */
interface Box {
  key: string
  left: number
  top: number
  right: number
  bottom: number
}

const FAMILY = "system-ui, 'Segoe UI', 'DejaVu Sans', sans-serif"
const SIZE_PX = 13
const FIRST_PX = 15
const GAP_PX = 5
const PAD_PX = 2

type Data = Parameters<NodeLabelDrawingFunction>[1] &
  Partial<Pick<SceneNode, 'shape' | 'side' | 'holding' | 'isOnWay'>> & {
    isFirst?: boolean
    /** the label may stand on the other side where there is no room */
    mayTurn?: boolean
    /** asked for, but not at the cost of another label */
    mayHide?: boolean
  }

const fontOf = ({ shape, isFirst, isOnWay }: Data): string => {
  if (shape === 'words') return `italic ${isOnWay ? 600 : 400} ${SIZE_PX - 0.5}px ${FAMILY}`
  return `${isFirst || isOnWay ? 600 : 400} ${isFirst ? FIRST_PX : SIZE_PX}px ${FAMILY}`
}

/** Not known is said by a sign too, so that it does not hang on a dashed ring alone. */
const wordsOf = ({ label, holding }: Data): string => (holding === 'unknown' ? `${label} ?` : (label ?? ''))

function boxOf(data: Data, width: number): Box {
  const { key, x, y, size, side, shape } = data
  const height = SIZE_PX + 2 * PAD_PX + 1
  const away = shape === 'words' ? -PAD_PX : size + GAP_PX
  const left = side === 'left' ? x - away - width : side === 'middle' ? x - width / 2 : x + away
  const top = side === 'middle' ? y + size + PAD_PX : y - height / 2
  return { key: String(key), left: left - PAD_PX, top, right: left + width + PAD_PX, bottom: top + height }
}

const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom - 1 && b.top < a.bottom - 1

/** Draws the labels of a picture so that none covers another, and knows afterwards where each stands. */
export class Labels {
  private boxes: Box[] = []
  /** Widths as measured [px]: the same words are drawn in every picture. */
  private readonly widths = new Map<string, number>()

  constructor(private readonly palette: () => Palette) {}

  /** To be called before each picture. */
  clear(): void {
    this.boxes = []
  }

  /** The node whose label lies at a point; null where there is none. */
  at({ x, y }: { x: number; y: number }): string | null {
    return (
      this.boxes.find(({ left, right, top, bottom }) => x >= left && x <= right && y >= top && y <= bottom)?.key ?? null
    )
  }

  readonly draw: NodeLabelDrawingFunction = (context, data: Data) => {
    const words = wordsOf(data)
    if (words === '') return
    const width = this.widthOf(context, words, fontOf(data))
    const first = boxOf(data, width)
    const isOut = data.mayTurn === true && first.right > context.canvas.clientWidth
    const box = isOut ? boxOf({ ...data, side: 'left' }, width) : first
    const isForced = data['forceLabel'] === true && data.mayHide !== true
    if (!isForced && this.boxes.some((other) => overlaps(box, other))) return
    this.boxes.push(box)
    this.write(context, data, words, box)
  }

  /** The one that is chosen or pointed at: a ring around its mark and its label in a box, above all others. */
  readonly drawChosen: NodeLabelDrawingFunction = (context, data: Data) => {
    const { ink, ware } = this.palette()
    const words = wordsOf(data)
    const box = boxOf(data, this.widthOf(context, words, fontOf(data)))
    context.lineWidth = 2.5
    context.strokeStyle = ink
    context.fillStyle = ware
    context.beginPath()
    context.arc(data.x, data.y, data.size + 5, 0, 2 * Math.PI)
    context.stroke()
    context.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top)
    context.lineWidth = 1
    context.strokeRect(box.left, box.top, box.right - box.left, box.bottom - box.top)
    this.write(context, data, words, box)
  }

  private widthOf(context: CanvasRenderingContext2D, words: string, font: string): number {
    const key = `${font} ${words}`
    const known = this.widths.get(key)
    if (known !== undefined) return known
    context.font = font
    const { width } = context.measureText(words)
    this.widths.set(key, width)
    return width
  }

  private write(context: CanvasRenderingContext2D, data: Data, words: string, box: Box): void {
    const { shape, holding } = data
    const { ink, faint, ware } = this.palette()
    context.font = fontOf(data)
    const middle = (box.top + box.bottom) / 2
    context.globalAlpha = 0.85
    context.fillStyle = ware
    context.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top)
    context.globalAlpha = 1
    context.fillStyle = shape === 'words' || holding === 'fails' ? faint : ink
    context.textBaseline = 'middle'
    context.fillText(words, box.left + PAD_PX, middle)
    if (holding === 'fails') context.fillRect(box.left, middle, box.right - box.left, 1.3)
  }
}
