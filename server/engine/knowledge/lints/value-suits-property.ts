import type { Claim, Problem, PropertySpec } from '#engine/model/records.ts'
import { rangeOfClaim } from './facts.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

const hasBody: Record<PropertySpec['kind'], (claim: Claim) => boolean> = {
  range: (claim) => rangeOfClaim(claim) !== undefined,
  'one-of': ({ is }) => is !== undefined,
  spectrum: ({ spectrum }) => spectrum !== undefined,
  profile: ({ shares }) => shares !== undefined,
}

function fault(claim: Claim, spec: PropertySpec): string | undefined {
  if (!hasBody[spec.kind](claim))
    return `${spec.id} is of the kind ${spec.kind} and this claim says nothing of that kind`
  if (claim.unit !== spec.unit) return `${spec.id} is in ${spec.unit || 'words'}, not in ${claim.unit || 'words'}`
  return undefined
}

/** Guards against a value in another unit or form than its property has: it would be compared with what it is not. */
export const valueSuitsProperty: Lint = (_raw, { ingredients, properties }) => {
  const problems: Problem[] = []
  for (const ingredient of ingredients.values()) {
    for (const [property, claims] of ingredient.facts) {
      const spec = properties.get(property)
      if (!spec) continue // tables keep what no rule reads under names of their own
      for (const claim of claims) {
        const message = fault(claim, spec)
        if (message !== undefined) problems.push({ path: placeOf(ingredient, claim), message })
      }
    }
  }
  return problems
}
