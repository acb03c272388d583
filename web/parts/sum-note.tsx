import type { Bench } from '#web/state/bench.ts'
import { letFill, scaleTo100 } from '#web/state/edit.ts'
import type { ShareSum } from '#web/state/shares.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'

interface Props {
  bench: Bench
  sum: ShareSum
  /** key and name of the water line, when there is one */
  water: { key: string; name: string } | null
  change: BenchStore['change']
}

/** Says when the shares do not come to 100, with the two ways out. */
export function SumNote({ bench, sum, water, change }: Props) {
  if (sum.state === 'adds-up' || bench.lines.length === 0) return null
  const others = bench.lines.filter(({ key }) => key !== water?.key)
  const canFill = water !== null && others.reduce((total, line) => total + (line.share_percent ?? 0), 0) < 100
  return (
    <div className="sum-note" role="status">
      <p>{text.sum[sum.state](sum.stated_percent)}</p>
      {(sum.state === 'short' || sum.state === 'over') && (
        <div className="row">
          {canFill && (
            <button type="button" onClick={() => change((now) => letFill(now, water.key, null))}>
              {text.sum.fill(water.name)}
            </button>
          )}
          <button type="button" onClick={() => change(scaleTo100)}>
            {text.sum.scale}
          </button>
        </div>
      )}
    </div>
  )
}
