import type { Swap } from '#web/client/use-swaps.ts'
import { upTo } from '#web/format/number.ts'
import { text } from '#web/text/text.ts'
import { Said } from './spoken.tsx'

type Row = Swap['criteria'][number]

interface Props {
  rows: readonly Row[]
  missing: string
  standIn: string
  /** factors on the weights by criterion, as moved by hand */
  weights?: Readonly<Record<string, number>>
  /** left out: the weights cannot be moved here */
  onWeight?: (criterion: string, factor: number) => void
}

const BAR_PX = 72

function Nearness({ nearness }: Pick<Row, 'nearness'>) {
  if (nearness === null) return <>{text.swaps.notKnown}</>
  return (
    <>
      <svg width={BAR_PX} height="10" aria-hidden="true">
        <rect className="bar-back" width={BAR_PX} height="10" rx="3" />
        <rect className="bar" width={Math.max(2, nearness * BAR_PX)} height="10" rx="3" />
      </svg>{' '}
      {upTo(nearness, 2)}
    </>
  )
}

function Weight({ row, weights = {}, onWeight }: { row: Row } & Pick<Props, 'weights' | 'onWeight'>) {
  if (!onWeight) return <>{text.swaps.weightShare(row.weight)}</>
  return (
    <select
      value={String(weights[row.criterion] ?? 1)}
      aria-label={text.swaps.weightOf(row.label)}
      data-weight={row.criterion}
      onChange={(event) => onWeight(row.criterion, Number(event.target.value))}
    >
      {text.swaps.weights.map(([factor, words]) => (
        <option key={factor} value={factor}>
          {words}
        </option>
      ))}
    </select>
  )
}

/** How near a stand-in comes in what, and how much each counts: a person can disagree and see the order change. */
export function CriteriaTable({ rows, missing, standIn, weights, onWeight }: Props) {
  if (rows.length === 0) return null
  return (
    <div className="scroll" role="region" aria-label={text.swaps.scores} tabIndex={0}>
      <table className="scores">
        <caption>{text.swaps.scoresCaption}</caption>
        <thead>
          <tr>
            <th scope="col">{text.swaps.criterion}</th>
            <th scope="col">{missing}</th>
            <th scope="col">{standIn}</th>
            <th scope="col">{text.swaps.score}</th>
            <th scope="col">{text.swaps.weight}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.criterion}>
              <th scope="row">
                <Said>{row.label}</Said>
                <small className="reason">
                  <Said>{row.why}</Said>
                </small>
              </th>
              <td>
                <Said>{row.missing}</Said>
              </td>
              <td>
                <Said>{row.standIn}</Said>
              </td>
              <td className="near">
                <Nearness nearness={row.nearness} />
              </td>
              <td>
                <Weight row={row} {...(weights && { weights })} {...(onWeight && { onWeight })} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
