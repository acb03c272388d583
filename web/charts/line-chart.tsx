import { useWidth } from '#web/client/use-width.ts'
import { Frame } from './chart-frame.tsx'
import { ChartNames } from './chart-names.tsx'
import { dashOf, letterOf, Mark } from './mark.tsx'
import { scaleOf } from './scale.ts'
import type { Scale } from './scale.ts'

export interface Point {
  x: number
  y: number
}
export interface Series {
  name: string
  line: readonly Point[]
  /** corners of the field that the line may lie in */
  area?: readonly Point[]
  /** points alone, no line through them */
  only?: boolean
}
export interface Level {
  at: number
  label: string
}

interface Props {
  /** what the drawing shows, for who does not see it */
  alt: string
  series: readonly Series[]
  x: { label: string; min: number; max: number }
  y: { label: string; min: number; max: number }
  /** upright lines, such as the recipe as it is now */
  uprights?: readonly Level[]
  /** level lines, such as the pH wanted */
  levels?: readonly Level[]
}

const HEIGHT_PX = 300
const EDGE = { left: 46, right: 26, top: 44, bottom: 46 }
const NARROW_PX = 480

/** Axes and where a value lies on the drawing. */
interface Plane {
  across: Scale
  up: Scale
  px: (value: number) => number
  py: (value: number) => number
  right: number
  bottom: number
}

function planeOf({ x, y }: Pick<Props, 'x' | 'y'>, width_px: number): Plane {
  const wide_px = Math.max(120, width_px - EDGE.left - EDGE.right)
  const high_px = HEIGHT_PX - EDGE.top - EDGE.bottom
  const across = scaleOf(x.min, x.max, width_px < NARROW_PX ? 5 : 8)
  const up = scaleOf(y.min, y.max, 5)
  return {
    across,
    up,
    px: (value) => EDGE.left + across.at(value) * wide_px,
    py: (value) => EDGE.top + (1 - up.at(value)) * high_px,
    right: EDGE.left + wide_px,
    bottom: EDGE.top + high_px,
  }
}

const path = (points: readonly Point[], { px, py }: Plane): string =>
  points.map(({ x, y }) => `${px(x).toFixed(1)},${py(y).toFixed(1)}`).join(' ')

function Guides({ plane, uprights, levels }: { plane: Plane; uprights: readonly Level[]; levels: readonly Level[] }) {
  const { across, px, py, right, bottom } = plane
  const side = (at: number) => (across.at(at) > 0.8 ? 'end' : across.at(at) < 0.2 ? 'start' : 'middle')
  return (
    <>
      {levels.map(({ at, label }) => (
        <g key={label} className="level">
          <line x1={EDGE.left} x2={right} y1={py(at)} y2={py(at)} />
          <text x={right} y={py(at) - 6} textAnchor="end">
            {label}
          </text>
        </g>
      ))}
      {uprights.map(({ at, label }) => (
        <g key={label} className="upright">
          <line x1={px(at)} x2={px(at)} y1={EDGE.top - 4} y2={bottom} />
          <text x={px(at)} y={EDGE.top - 8} textAnchor={side(at)}>
            {label}
          </text>
        </g>
      ))}
    </>
  )
}

function Line({ one, at, plane, now }: { one: Series; at: number; plane: Plane; now: readonly Level[] }) {
  const { px, py } = plane
  const last = one.line.at(-1)
  return (
    <g>
      {!one.only && (
        <polyline className={`series-${at % 4}`} points={path(one.line, plane)} strokeDasharray={dashOf(at)} />
      )}
      {one.line.map(({ x, y }) => (
        <Mark
          key={`${x} ${y}`}
          series={at}
          x={px(x)}
          y={py(y)}
          large={one.only === true || now.some((upright) => upright.at === x)}
        />
      ))}
      {last && (
        <text className="letter" x={px(last.x) + 9} y={py(last.y) + 5}>
          {letterOf(at)}
        </text>
      )}
    </g>
  )
}

/** Lines over two straight axes, told apart by shape, dash and letter; colour only comes on top. */
export function LineChart({ alt, series, x, y, uprights = [], levels = [] }: Props) {
  const [ref, width_px] = useWidth<HTMLDivElement>(560)
  const plane = planeOf({ x, y }, width_px)
  const sample = (at: number) => (
    <>
      {!series[at]?.only && (
        <line className={`series-${at % 4}`} x1="0" x2="40" y1="8" y2="8" strokeDasharray={dashOf(at)} />
      )}
      <Mark series={at} x={20} y={8} large={false} />
    </>
  )
  return (
    <figure className="chart">
      <ChartNames names={series.map(({ name }) => name)} sample={sample} />
      <div ref={ref}>
        <svg className="chart-drawing" width={width_px} height={HEIGHT_PX} role="img" aria-label={alt}>
          <Frame {...plane} xLabel={x.label} yLabel={y.label} />
          {series.map(({ name, area = [] }, at) =>
            area.length > 2 ? (
              <polygon key={name} className={`area series-${at % 4}`} points={path(area, plane)} />
            ) : null,
          )}
          <Guides plane={plane} uprights={uprights} levels={levels} />
          {series.map((one, at) => (
            <Line key={one.name} one={one} at={at} plane={plane} now={uprights} />
          ))}
        </svg>
      </div>
    </figure>
  )
}
