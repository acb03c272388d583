import type { LabelAllergen } from '#web/client/use-label.ts'
import { facts } from '#web/text/facts.ts'
import { label as T } from '#web/text/label.ts'
import { LabelFrom } from './label-from.tsx'
import { Said } from './spoken.tsx'

interface Props {
  allergens: readonly LabelAllergen[]
  labelOf: (id: string) => string
}

function Row({ allergen, labelOf }: { allergen: LabelAllergen; labelOf: Props['labelOf'] }) {
  const { name, declare, percent, from, analysed, why } = allergen
  return (
    <tr data-declare={declare || undefined}>
      <th scope="row">{name}</th>
      <td className="share" data-head={T.allergens.sum}>
        {T.share(percent)}
      </td>
      <td data-head={T.allergens.declare}>{declare ? <strong>{T.allergens.yes}</strong> : T.allergens.no}</td>
      <td data-head={T.allergens.why}>
        <Said>{why}</Said>
      </td>
      <td data-head={T.allergens.from}>
        <LabelFrom ids={from} labelOf={labelOf} />
        {analysed.length > 0 && <small> ({facts.analyses.used})</small>}
      </td>
    </tr>
  )
}

/** Fragrance allergens with the sums behind them, those to declare first. */
export function LabelAllergens({ allergens, labelOf }: Props) {
  const sorted = [...allergens].sort((a, b) => Number(b.declare) - Number(a.declare) || b.percent.max - a.percent.max)
  return (
    <section className="card" aria-labelledby="label-allergens-title">
      <h2 id="label-allergens-title">{T.allergens.title}</h2>
      {sorted.length === 0 ? (
        <p>{T.allergens.none}</p>
      ) : (
        <>
          <p className="remark">{T.allergens.remark}</p>
          <table className="label-table sheet-table">
            <caption className="hidden">{T.allergens.caption}</caption>
            <thead>
              <tr>
                <th scope="col">{T.allergens.name}</th>
                <th scope="col">{T.allergens.sum}</th>
                <th scope="col">{T.allergens.declare}</th>
                <th scope="col">{T.allergens.why}</th>
                <th scope="col">{T.allergens.from}</th>
              </tr>
            </thead>
            <tbody>
              {sorted.map((allergen) => (
                <Row key={allergen.name} allergen={allergen} labelOf={labelOf} />
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  )
}
