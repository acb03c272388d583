import { shareText } from '#web/format/number.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { text } from '#web/text/text.ts'

interface Props {
  formula: Formula
  /** ingredients that are new in it */
  fresh: readonly string[]
  labelOf: (id: string) => string
}

/** A whole recipe to read, not to change. */
export function FormulaTable({ formula, fresh, labelOf }: Props) {
  const stated = formula.lines.reduce((sum, { share_percent }) => sum + (share_percent ?? 0), 0)
  return (
    <table className="formula">
      <thead>
        <tr>
          <th scope="col">{text.swaps.lines}</th>
          <th scope="col">{text.swaps.share}</th>
          <th scope="col">{text.recipe.phase}</th>
        </tr>
      </thead>
      <tbody>
        {formula.lines.map(({ ingredient, share_percent, phase }, at) => (
          <tr key={`${ingredient}${at}`} data-fresh={fresh.includes(ingredient) || undefined}>
            <th scope="row">{labelOf(ingredient)}</th>
            <td>{shareText(share_percent ?? 100 - stated)}</td>
            <td>{phase ? text.recipe.phases[phase] : ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
