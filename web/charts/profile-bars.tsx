import { useId } from 'react'
import { useWidth } from '#web/client/use-width.ts'
import { upTo } from '#web/format/number.ts'
import { calculations } from '#web/text/calculations.ts'
import { ChartNames } from './chart-names.tsx'
import { letterOf } from './mark.tsx'

export interface BarRow {
  label: string
  /** per cent; null: the source does not list it, which is not the same as nothing */
  values: readonly [number | null, number | null]
}

interface Props {
  alt: string
  names: readonly [string, string]
  rows: readonly BarRow[]
}

const T = calculations.oils
const BAR_PX = 15
const ROW_PX = 46
const LABEL_ROW_PX = 66
const NARROW_PX = 480

interface Layout {
  left: number
  isNarrow: boolean
  hatch: string
  long: (value: number) => number
}

function Row({ row, top, layout }: { row: BarRow; top: number; layout: Layout }) {
  const { left, isNarrow, hatch, long } = layout
  return (
    <g>
      <text className="bar-label" x="0" y={isNarrow ? top - 6 : top + BAR_PX + 5}>
        {row.label}
      </text>
      {row.values.map((value, at) => {
        const y = top + at * (BAR_PX + 2)
        return (
          <g key={letterOf(at)}>
            {value !== null && (
              <rect
                className={`bar-${at}`}
                x={left}
                y={y}
                width={long(value)}
                height={BAR_PX}
                {...(at === 1 && { fill: hatch })}
              />
            )}
            <text x={left - 6} y={y + 12} textAnchor="end" className="bar-letter">
              {letterOf(at)}
            </text>
            {value === null ? (
              <text x={left + 4} y={y + 12} className="bar-none">
                {T.notListed}
              </text>
            ) : (
              <text x={left + long(value) + 6} y={y + 12}>
                {upTo(value, value < 1 ? 2 : 1)} %
              </text>
            )}
          </g>
        )
      })}
    </g>
  )
}

/** Two bars a row, one above the other: the first full, the second hatched, each with its letter and its figure. */
export function ProfileBars({ alt, names, rows }: Props) {
  const [ref, width_px] = useWidth<HTMLDivElement>(640)
  const id = useId()
  const isNarrow = width_px < NARROW_PX
  const left = isNarrow ? 22 : 180
  const row_px = isNarrow ? LABEL_ROW_PX : ROW_PX
  const most = Math.max(1, ...rows.flatMap(({ values }) => values.map((value) => value ?? 0)))
  const hatch = `url(#${id})`
  const layout = {
    left,
    isNarrow,
    hatch,
    long: (value: number) => Math.max(1, (value / most) * (width_px - left - 62)),
  }
  return (
    <figure className="chart">
      <ChartNames
        names={names}
        sample={(at) => (
          <rect className={`bar-${at}`} x="1" y="1" width="38" height="14" {...(at === 1 && { fill: hatch })} />
        )}
      />
      <div ref={ref}>
        <svg className="chart-drawing" width={width_px} height={rows.length * row_px + 4} role="img" aria-label={alt}>
          <defs>
            <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <rect className="hatch-ground" width="6" height="6" />
              <line className="hatch" x1="0" x2="0" y1="0" y2="6" />
            </pattern>
          </defs>
          {rows.map((row, at) => (
            <Row key={row.label} row={row} top={at * row_px + (isNarrow ? 22 : 4)} layout={layout} />
          ))}
        </svg>
      </div>
    </figure>
  )
}
