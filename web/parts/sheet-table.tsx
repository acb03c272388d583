import { Link } from 'wouter'
import type { SheetRow } from '#web/client/use-swap-sheet.ts'
import type { Money } from '#web/format/cost-note.ts'
import { upTo } from '#web/format/number.ts'
import { sharesOf } from '#web/state/swap-cost.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { sheet as T } from '#web/text/sheet.ts'
import { SheetStandIns } from './sheet-stand-ins.tsx'
import { lowered } from '#web/format/lower.ts'
import { Said } from './spoken.tsx'

interface Props {
  rows: readonly SheetRow[]
  formula: Formula
  labelOf: (id: string) => string
  money: Money
}

const MOST_JOBS = 3

function Row({ row, share_percent, ...props }: Omit<Props, 'rows'> & { row: SheetRow; share_percent: number }) {
  const { line, state, ingredient } = row
  return (
    <tr>
      <td className="share">{upTo(share_percent, share_percent < 1 ? 3 : 2)}</td>
      <th scope="row">
        <Link href={`/ingredient/${ingredient}`}>{props.labelOf(ingredient)}</Link>
        {line && (
          <small>
            <Said>
              {line.roles
                .slice(0, MOST_JOBS)
                .map(({ label }) => lowered(label))
                .join(', ')}
            </Said>
          </small>
        )}
      </th>
      <td data-head={T.columns.standIns}>
        {line ? <SheetStandIns line={line} {...props} /> : state === 'failed' ? T.failed : T.waiting}
      </td>
      <td data-head={T.columns.without} data-verdict={line?.leaveOut.verdict}>
        {line && (
          <>
            <strong>{T.leaveOut[line.leaveOut.verdict]}</strong>{' '}
            <small>
              <Said>{line.leaveOut.why}</Said>
            </small>
          </>
        )}
      </td>
    </tr>
  )
}

/** A row for each ingredient: share, job, stand-ins with dose, and what happens without it. */
export function SheetTable({ rows, ...props }: Props) {
  const shares = sharesOf(props.formula)
  return (
    <table className="swap-table sheet-table">
      <caption className="hidden">{T.caption}</caption>
      <thead>
        <tr>
          <th scope="col" className="share">
            {T.columns.share}
          </th>
          <th scope="col">{T.columns.line}</th>
          <th scope="col">{T.columns.standIns}</th>
          <th scope="col">{T.columns.without}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.ingredient} row={row} share_percent={shares.get(row.ingredient) ?? 0} {...props} />
        ))}
      </tbody>
    </table>
  )
}
