import type { Claim, Ingredient, Problem } from '#engine/model/records.ts'
import { gap } from '#engine/units/range.ts'
import { rangeOfClaim } from './facts.ts'
import { placeOf } from './places.ts'

/** Another grade of the oil (high oleic) has other acids and other figures. */
const isOfGrade = ({ conditions }: Claim): boolean => conditions?.startsWith('grade') === true
const isDerived = ({ id }: Claim): boolean => id.endsWith('/derived')

/** Single lots of an oil differ in earnest: what a table adds is judged where it decides, what a record states always. */
const isJudged = (ingredient: Ingredient, { id, used }: Claim): boolean => used || id.startsWith(`${ingredient.id}#`)

/** Stated values of a property that lie further from the one worked out than its method allows. */
export function farFromDerived(ingredient: Ingredient, property: string, tolerance: number): Problem[] {
  const claims = ingredient.facts.get(property) ?? []
  const derived = claims.find(isDerived)?.value
  if (derived === undefined) return []
  return claims.flatMap((claim) => {
    const stated = rangeOfClaim(claim)
    if (isDerived(claim) || isOfGrade(claim) || !stated || !isJudged(ingredient, claim)) return []
    const away = gap(stated, { min: derived, max: derived })
    if (away <= tolerance) return []
    const text = `${stated.min ?? '?'} to ${stated.max ?? '?'}`
    return [
      {
        path: placeOf(ingredient, claim),
        message: `${property} ${text}, worked out from its acids ${derived}: ${away.toFixed(1)} apart`,
      },
    ]
  })
}
