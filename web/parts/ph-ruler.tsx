import { readable } from '#web/client/use-labels.ts'
import type { CheckReply } from '#web/client/use-check.ts'
import { useWidth } from '#web/client/use-width.ts'
import { rangeText } from '#web/format/number.ts'
import { text } from '#web/text/text.ts'
import { RulerDrawing } from './ruler-drawing.tsx'
import type { RulerRow } from './ruler-drawing.tsx'

function rowsOf(reply: CheckReply): RulerRow[] {
  const rows = new Map<string, RulerRow>()
  for (const { ingredient, keeps_ph, works_ph } of reply.windows) {
    if (!keeps_ph && !works_ph) continue
    const name = readable(reply.roles.find((line) => line.ingredient === ingredient)?.inci ?? ingredient)
    rows.set(ingredient, {
      id: ingredient,
      name,
      ...(keeps_ph && { keeps: keeps_ph }),
      ...(works_ph && { works: works_ph }),
    })
  }
  return [...rows.values()]
}

function AsTable({ rows }: { rows: readonly RulerRow[] }) {
  return (
    <details className="as-table">
      <summary>{text.ruler.asTable}</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">{text.recipe.line}</th>
            <th scope="col">{text.ruler.keeps}</th>
            <th scope="col">{text.ruler.works}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, name, keeps, works }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>{keeps ? rangeText(keeps) : text.ruler.any}</td>
              <td>{works ? rangeText(works) : text.ruler.any}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}

/** pH windows of all lines on one scale, with the pH of the recipe. */
export function PhRuler({ reply, ph }: { reply: CheckReply; ph: number | null }) {
  const [ref, width_px] = useWidth<HTMLDivElement>(640)
  const rows = rowsOf(reply)
  const without = new Set(reply.roles.map(({ ingredient }) => ingredient)).size - rows.length
  const common = reply.common_ph === null ? null : rangeText(reply.common_ph)
  return (
    <section className="card" aria-labelledby="ruler-title">
      <h2 id="ruler-title">{text.ruler.title}</h2>
      <p>{rows.length === 0 ? text.ruler.none : text.ruler.lead}</p>
      {rows.length > 0 && (
        <>
          <p>
            <strong>{ph === null ? text.ruler.noPh : text.ruler.ph(ph)}.</strong>{' '}
            {common === null ? text.ruler.noCommon : common !== '' && text.ruler.commonText(common)}{' '}
            {without > 0 && text.ruler.without(without)}
          </p>
          <ul className="legend" aria-hidden="true">
            <li className="keeps">{text.ruler.keeps}</li>
            <li className="works">{text.ruler.works}</li>
            {common !== null && <li className="common">{text.ruler.common}</li>}
          </ul>
          <div ref={ref}>
            <RulerDrawing rows={rows} ph={ph} common={reply.common_ph} width_px={width_px} />
          </div>
          <AsTable rows={rows} />
        </>
      )}
    </section>
  )
}
