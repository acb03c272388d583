import { upTo } from '#web/format/number.ts'
import { termWords } from '#web/format/term.ts'
import { text } from '#web/text/text.ts'

const BAR_PX = 120

const OVERALL = 'rank' // all criteria and what the checks take off, in one figure

/** Nearness by criterion as figures with bars. */
export function SwapScores({ scores }: { scores: Record<string, number> }) {
  const rows = Object.entries(scores).sort(
    ([a, x], [b, y]) => Number(b === OVERALL) - Number(a === OVERALL) || y - x || (a < b ? -1 : 1),
  )
  if (rows.length === 0) return null
  return (
    <table className="scores">
      <caption>{text.swaps.scores}</caption>
      <thead className="hidden">
        <tr>
          <th scope="col">{text.swaps.criterion}</th>
          <th scope="col">{text.swaps.score}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([criterion, score]) => (
          <tr key={criterion}>
            <th scope="row">{termWords(criterion)}</th>
            <td>
              <svg width={BAR_PX} height="12" aria-hidden="true">
                <rect className="bar-back" width={BAR_PX} height="12" rx="3" />
                <rect className="bar" width={Math.max(2, Math.min(1, score) * BAR_PX)} height="12" rx="3" />
              </svg>{' '}
              {upTo(score, 2)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
