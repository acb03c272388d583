import { upTo } from '#web/format/number.ts'
import type { Scale } from './scale.ts'

interface Props {
  across: Scale
  up: Scale
  px: (value: number) => number
  py: (value: number) => number
  xLabel: string
  yLabel: string
}

/** Axes of a drawing: faint lines, figures, what is measured along them. */
export function Frame({ across, up, px, py, xLabel, yLabel }: Props) {
  const [left, right] = [px(across.from), px(across.to)]
  const [bottom, top] = [py(up.from), py(up.to)]
  return (
    <g className="chart-frame">
      {up.ticks.map((tick) => (
        <g key={tick}>
          <line x1={left} x2={right} y1={py(tick)} y2={py(tick)} />
          <text x={left - 6} y={py(tick) + 5} textAnchor="end">
            {upTo(tick, 6)}
          </text>
        </g>
      ))}
      {across.ticks.map((tick) => (
        <g key={tick}>
          <line x1={px(tick)} x2={px(tick)} y1={bottom} y2={bottom + 5} className="tick" />
          <text x={px(tick)} y={bottom + 20} textAnchor="middle">
            {upTo(tick, 6)}
          </text>
        </g>
      ))}
      <text className="axis-label" x={(left + right) / 2} y={bottom + 40} textAnchor="middle">
        {xLabel}
      </text>
      <text className="axis-label" x={0} y={top - 28}>
        {yLabel}
      </text>
    </g>
  )
}
