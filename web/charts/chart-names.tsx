import type { ReactNode } from 'react'
import { letterOf } from './mark.tsx'

interface Props {
  names: readonly string[]
  /** a sample of how the series of this number is drawn, 40 by 16 px */
  sample: (series: number) => ReactNode
}

/** Which letter, shape and dash stands for what; above the drawing, so that it is read first. */
export function ChartNames({ names, sample }: Props) {
  return (
    <ul className="chart-names">
      {names.map((name, at) => (
        <li key={letterOf(at)}>
          <svg width="40" height="16" aria-hidden="true">
            {sample(at)}
          </svg>
          <span>
            <strong>{letterOf(at)}</strong> {name}
          </span>
        </li>
      ))}
    </ul>
  )
}
