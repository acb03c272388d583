import type { LearnItem } from '#web/client/use-learn.ts'
import { learn as T } from '#web/text/learn.ts'
import { upTo } from '#web/format/number.ts'
import { Said } from './spoken.tsx'

/** The recipe that a question is about. */
export function LearnRecipe({ recipe }: { recipe: NonNullable<LearnItem['recipe']> }) {
  const { title, formula, names, cautions } = recipe
  return (
    <>
      <table className="learn-recipe">
        <caption>
          {T.recipe(title)} <small>{T.conditions(formula.ph, formula.hottest_c)}</small>
        </caption>
        <thead>
          <tr>
            <th scope="col">{T.line}</th>
            <th scope="col">{T.share}</th>
          </tr>
        </thead>
        <tbody>
          {formula.lines.map(({ ingredient, share_percent, fills }) => (
            <tr key={ingredient}>
              <th scope="row">{names[ingredient] ?? ingredient}</th>
              <td>{fills === true ? T.fills : share_percent !== undefined && upTo(share_percent, 4)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {cautions.length > 0 && (
        <ul className="learn-cautions" aria-label={T.cautions}>
          {cautions.map((one) => (
            <li key={one}>
              <Said>{one}</Said>
            </li>
          ))}
        </ul>
      )}
    </>
  )
}
