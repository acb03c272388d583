import { AXIS, barOf, xOf } from '#web/format/ruler.ts'
import { text } from '#web/text/text.ts'

export interface RulerRow {
  id: string
  name: string
  keeps?: { min?: number; max?: number }
  works?: { min?: number; max?: number }
}
interface Props {
  rows: readonly RulerRow[]
  ph: number | null
  common: { min?: number; max?: number } | null
  width_px: number
}

const NARROW_PX = 560
const HEAD_PX = 44
const TICKS = Array.from({ length: AXIS.to - AXIS.from + 1 }, (_, at) => AXIS.from + at)
const MARGIN_PX = 14

const cut = (name: string, most: number): string => (name.length > most ? `${name.slice(0, most - 1)}…` : name)

interface RowProps {
  row: RulerRow
  y: number
  left: number
  axis_px: number
  isNarrow: boolean
}

function Bars({ row, y, left, axis_px, isNarrow }: RowProps) {
  const barY = isNarrow ? y + 20 : y + 5
  return (
    <g>
      <line className="track" x1={left} x2={left + axis_px} y1={barY + 10} y2={barY + 10} />
      {row.keeps && <rect className="keeps" y={barY + 1} height="18" rx="4" {...shifted(row.keeps, left, axis_px)} />}
      {row.works && <rect className="works" y={barY + 6} height="8" rx="2" {...shifted(row.works, left, axis_px)} />}
    </g>
  )
}

function shifted(range: { min?: number; max?: number }, left: number, axis_px: number) {
  const { x, width } = barOf(range, axis_px)
  return { x: x + left, width }
}

/** Names come last, so that the pH mark does not run through them. */
function Name({ row, y, isNarrow }: Pick<RowProps, 'row' | 'y' | 'isNarrow'>) {
  return (
    <text className="name" x={isNarrow ? MARGIN_PX : 0} y={isNarrow ? y + 14 : y + 20}>
      {cut(row.name, isNarrow ? 44 : 30)}
    </text>
  )
}

/** The drawing of the ruler: one axis, one row a line, the pH of the recipe across all rows. */
export function RulerDrawing({ rows, ph, common, width_px }: Props) {
  const isNarrow = width_px < NARROW_PX
  const left = isNarrow ? MARGIN_PX : 236
  const axis_px = width_px - left - MARGIN_PX
  const row_px = isNarrow ? 44 : 30
  const bottom = HEAD_PX + rows.length * row_px
  return (
    <svg
      className="ruler"
      width={width_px}
      height={bottom + 6}
      viewBox={`0 0 ${width_px} ${bottom + 6}`}
      aria-hidden="true"
    >
      {common && (
        <rect className="common" y={HEAD_PX - 6} height={bottom - HEAD_PX + 8} {...shifted(common, left, axis_px)} />
      )}
      {TICKS.map((tick) => (
        <g key={tick}>
          <line
            className="tick-line"
            x1={left + xOf(tick, axis_px)}
            x2={left + xOf(tick, axis_px)}
            y1={HEAD_PX - 8}
            y2={bottom}
          />
          <text className="tick-text" x={left + xOf(tick, axis_px)} y={HEAD_PX - 13} textAnchor="middle">
            {tick}
          </text>
        </g>
      ))}
      {rows.map((row, at) => (
        <Bars key={row.id} row={row} y={HEAD_PX + at * row_px} left={left} axis_px={axis_px} isNarrow={isNarrow} />
      ))}
      {ph !== null && (
        <g className="ph-mark">
          <line x1={left + xOf(ph, axis_px)} x2={left + xOf(ph, axis_px)} y1={18} y2={bottom + 4} />
          <text x={Math.min(left + xOf(ph, axis_px), width_px - 34)} y={13} textAnchor="middle">
            {text.ruler.ph(ph)}
          </text>
        </g>
      )}
      {rows.map((row, at) => (
        <Name key={row.id} row={row} y={HEAD_PX + at * row_px} isNarrow={isNarrow} />
      ))}
    </svg>
  )
}
