import { calculations as T } from '#web/text/calculations.ts'

interface Props {
  caption: string
  heads: readonly string[]
  rows: readonly (readonly string[])[]
}

/** The data of a drawing as a table, folded away below it. */
export function ChartTable({ caption, heads, rows }: Props) {
  return (
    <details className="chart-table">
      <summary>{T.table}</summary>
      <div className="scroll" role="region" aria-label={caption} tabIndex={0}>
        <table>
          <caption className="hidden">{caption}</caption>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([first = '', ...cells]) => (
              <tr key={first}>
                <th scope="row">{first}</th>
                {cells.map((cell, at) => (
                  <td key={at}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  )
}
