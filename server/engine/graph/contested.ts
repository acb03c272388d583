import type { Claim, Ingredient, PropertySpec } from '#engine/model/records.ts'
import { gap } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'

/** Two prints of one figure, rounded differently, are no disagreement. */
const ROUNDING = 0.01

function rangeOfClaim(claim: Claim): Range | undefined {
  if (claim.value !== undefined) return { min: claim.value, max: claim.value }
  if (claim.min === undefined && claim.max === undefined) return undefined
  return { ...(claim.min !== undefined && { min: claim.min }), ...(claim.max !== undefined && { max: claim.max }) }
}

function apart(a: Claim, b: Claim): boolean {
  const [first, second] = [rangeOfClaim(a), rangeOfClaim(b)]
  if (!first || !second || a.unit !== b.unit) return false
  const size = Math.max(...[first.min, first.max, second.min, second.max].map((end) => Math.abs(end ?? 0)))
  return gap(first, second) > size * ROUNDING
}

const otherWord = (a: Claim, b: Claim): boolean => a.is !== undefined && b.is !== undefined && a.is !== b.is

const otherSpectrum = (a: Claim, b: Claim): boolean =>
  Object.entries(a.spectrum ?? {}).some(([group, word]) => {
    const other = b.spectrum?.[group]
    return other !== undefined && other !== word
  })

/** Figures of another grade (high oleic) are of another oil. */
const sameGrade = (a: Claim, b: Claim): boolean => gradeOf(a) === gradeOf(b)
const gradeOf = ({ conditions }: Claim): string => /^grade [^;]+/.exec(conditions ?? '')?.[0] ?? ''

/** Words are compared only where the vocabulary fixes them: free text of two sources always differs. */
function disagree(a: Claim, b: Claim, spec: PropertySpec | undefined): boolean {
  if (!sameGrade(a, b)) return false
  // What no rule reads is kept with its circumstances: two organisms or two steps of an acid are no disagreement.
  if (!spec && a.conditions !== b.conditions) return false
  return apart(a, b) || otherSpectrum(a, b) || (spec?.kind === 'one-of' && otherWord(a, b))
}

/** Properties on which the claims of a record disagree, by name. */
export function contestedProperties(ingredient: Ingredient, properties: ReadonlyMap<string, PropertySpec>): string[] {
  return [...ingredient.facts]
    .filter(([property, claims]) =>
      claims.some((a, at) => claims.slice(at + 1).some((b) => disagree(a, b, properties.get(property)))),
    )
    .map(([property]) => property)
    .sort()
}
