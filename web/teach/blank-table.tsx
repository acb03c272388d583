import { upTo } from '#web/format/number.ts'
import { teach } from '#web/text/teach.ts'

const T = teach.handout

interface Props {
  ids: readonly string[]
  shares: ReadonlyMap<string, number>
  labelOf: (id: string) => string
}

/** A row for each ingredient with room to write in what the key says. */
export function BlankTable({ ids, shares, labelOf }: Props) {
  const { share, line, job, standIn, dose, without } = T.columns
  return (
    <table className="sheet-table teach-blanks">
      <caption className="hidden">{T.caption}</caption>
      <thead>
        <tr>
          {[share, line, job, standIn, dose, without].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {ids.map((id) => {
          const share_percent = shares.get(id) ?? 0
          return (
            <tr key={id}>
              <td>{upTo(share_percent, share_percent < 1 ? 3 : 2)}</td>
              <th scope="row">{labelOf(id)}</th>
              <td />
              <td />
              <td />
              <td className="teach-boxes">
                {T.leaveOut.map((one) => (
                  <span key={one}>
                    <span aria-hidden="true">☐</span> {one}
                  </span>
                ))}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
