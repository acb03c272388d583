import type { GroupTally } from '#web/state/teach-marks.ts'
import { teach } from '#web/text/teach.ts'
import { ShareCells } from './share-cell.tsx'

const { columns } = teach.results

interface Props {
  title: string
  /** head of the first column */
  head?: string
  groups: readonly GroupTally[]
  labelOf: (group: string) => string
  /** whether a question can be left open */
  hasOpen?: boolean
}

/** How each group of questions went, in the order given. */
export function GroupTable({ title, head = columns.group, groups, labelOf, hasOpen = false }: Props) {
  return (
    <section className="card teach-result">
      <table className="sheet-table teach-table">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">{head}</th>
            <th scope="col">{columns.right}</th>
            <th scope="col">{columns.share}</th>
            {hasOpen && <th scope="col">{columns.open}</th>}
          </tr>
        </thead>
        <tbody>
          {groups.map((one) => (
            <tr key={one.group}>
              <th scope="row">{labelOf(one.group)}</th>
              <ShareCells tally={one} />
              {hasOpen && <td data-head={columns.open}>{one.open}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
