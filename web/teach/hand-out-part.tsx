import { useState } from 'react'
import type { TeachClass } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'
import { HandOut } from './hand-out.tsx'
import { recipeTitle } from './recipe-choices.ts'

const T = teach.handout

/** The hand-out of one recipe of the class. */
export function HandOutPart({ of }: { of: TeachClass }) {
  const [from, setFrom] = useState<string | null>(null)
  const [withKey, setWithKey] = useState(true)
  const recipe = of.recipes.find((one) => one.from === from) ?? of.recipes[0]
  if (!recipe) return <p role="status">{T.none}</p>
  return (
    <>
      <section className="card screen-only" aria-label={teach.parts.handout}>
        <p>{T.lead}</p>
        <div className="row">
          <label className="field">
            <span>{T.recipe}</span>
            <select value={recipe.from} onChange={({ target }) => setFrom(target.value)}>
              {of.recipes.map((one) => (
                <option key={one.from} value={one.from}>
                  {recipeTitle(one.bench)}
                </option>
              ))}
            </select>
          </label>
          <label className="tick">
            <input type="checkbox" checked={withKey} onChange={() => setWithKey(!withKey)} />
            {T.withKey}
          </label>
        </div>
      </section>
      <HandOut key={recipe.from} of={of} recipe={recipe} withKey={withKey} />
    </>
  )
}
