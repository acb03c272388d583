import { inside, rangeText } from '#engine/units/range.ts'
import { rangeOfClaim } from './facts.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

/** Guards against a slipped point or a wrong unit: `plausible` of a property is wider than anything real. */
export const valueIsPlausible: Lint = (_raw, { ingredients, properties }) => {
  const bounded = [...properties.values()].flatMap(({ id, plausible }) => (plausible ? [{ id, plausible }] : []))
  return [...ingredients.values()].flatMap((ingredient) =>
    bounded.flatMap(({ id, plausible }) =>
      (ingredient.facts.get(id) ?? []).flatMap((claim) => {
        const { min, max } = rangeOfClaim(claim) ?? {}
        const wild = [min, max].find((end) => end !== undefined && !inside(end, plausible))
        if (wild === undefined) return []
        return [
          {
            path: placeOf(ingredient, claim),
            message: `${wild} lies outside what is plausible, ${rangeText(plausible)}`,
          },
        ]
      }),
    ),
  )
}
