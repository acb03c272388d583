import type { LabelPosition } from '#web/client/use-label.ts'
import { label as T } from '#web/text/label.ts'
import { LabelFrom } from './label-from.tsx'
import { Said } from './spoken.tsx'

interface Props {
  positions: readonly LabelPosition[]
  labelOf: (id: string) => string
}

/** Every position of the list with its share, its place and what brings it. */
export function LabelPositions({ positions, labelOf }: Props) {
  return (
    <section className="card" aria-labelledby="label-positions-title">
      <h2 id="label-positions-title">{T.positions.title}</h2>
      <table className="label-table sheet-table">
        <caption className="hidden">{T.positions.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{T.positions.place}</th>
            <th scope="col">{T.positions.name}</th>
            <th scope="col">{T.positions.share}</th>
            <th scope="col">{T.positions.why}</th>
            <th scope="col">{T.positions.from}</th>
          </tr>
        </thead>
        <tbody>
          {positions.map(({ name, percent, why, from, group }, at) => (
            <tr key={name} data-group={group}>
              <td className="place">{at + 1}</td>
              <th scope="row">{name}</th>
              <td className="share" data-head={T.positions.share}>
                {T.share(percent)}
              </td>
              <td data-head={T.positions.why}>
                <Said>{why}</Said>
              </td>
              <td data-head={T.positions.from}>
                <LabelFrom ids={from} labelOf={labelOf} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
