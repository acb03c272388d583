import type { Problem } from '#engine/model/records.ts'
import { inside, rangeText } from '#engine/units/range.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

/** Guards against a slipped point or a wrong unit: `plausible` of a property is wider than anything real. */
export const valueIsPlausible: Lint = (_raw, { ingredients, properties }) => {
  const problems: Problem[] = []
  for (const ingredient of ingredients.values()) {
    for (const [property, claims] of ingredient.facts) {
      const plausible = properties.get(property)?.plausible
      if (!plausible) continue
      for (const claim of claims) {
        const wild = [claim.value, claim.min, claim.max].find((end) => end !== undefined && !inside(end, plausible))
        if (wild === undefined) continue
        const message = `${wild} lies outside what is plausible, ${rangeText(plausible)}`
        problems.push({ path: placeOf(ingredient, claim), message })
      }
    }
  }
  return problems
}
