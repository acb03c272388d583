import { iodineValue, saponificationValue } from '#engine/chemistry/oil-constants.ts'
import type { Claim, Ingredient } from '#engine/model/records.ts'
import { roundTo } from '#engine/units/round.ts'

/** Iodine and saponification value worked out from the fatty acids of a triglyceride, marked derived. */
export function oilConstantClaims(ingredient: Ingredient): Claim[] {
  const profile = ingredient.facts.get('fatty_acids')?.find(({ used }) => used)
  if (!profile?.shares || !ingredient.classes.has('triglyceride')) return []
  const values = {
    iodine_value: iodineValue(profile.shares),
    saponification_value: saponificationValue(profile.shares),
  }
  return Object.entries(values).flatMap(([property, value]) =>
    value === null
      ? []
      : [
          {
            id: `${ingredient.id}#${property}/derived`,
            property,
            value: roundTo(value, 1),
            unit: property === 'iodine_value' ? 'g/100 g' : 'mg/g',
            kind: 'derived' as const,
            source: profile.source,
            locator: `worked out from ${profile.id}`,
            access: profile.access,
            date: profile.date,
            used: false,
          },
        ],
  )
}
