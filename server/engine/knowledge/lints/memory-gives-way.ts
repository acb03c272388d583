import { isSeen } from '#engine/model/access.ts'
import { isByProgram } from '#engine/model/evidence.ts'
import type { Claim, Ingredient } from '#engine/model/records.ts'
import { rangeOfClaim } from './facts.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

/** How near a seen constant has to come to the remembered one, and how wide that may be, to be the same figure. */
const CONSTANTS: Record<string, { near: (value: number) => number; widest: number }> = {
  acid_pka: { near: () => 0.03, widest: 0 },
  molar_mass: { near: (value) => value * 0.003, widest: 0 },
  melting_c: { near: () => 2, widest: 6 },
  boiling_c: { near: () => 3, widest: 6 },
}

/** Whether a seen claim says the same as a remembered one. */
function confirms(seen: Claim, own: Claim): boolean {
  const [a, b] = [rangeOfClaim(seen), rangeOfClaim(own)]
  if (!a || !b || seen.conditions !== undefined) return false
  const constant = CONSTANTS[own.property]
  if (!constant) return a.min === b.min && a.max === b.max
  if (a.min === undefined || b.min === undefined || b.max === undefined) return false
  const near = constant.near(a.min)
  return b.max - b.min <= constant.widest && a.min >= b.min - near && a.min <= b.max + near
}

/** Remembered claims of the record itself that a table confirms by a seen one. */
export function confirmedClaims(ingredient: Ingredient): Claim[] {
  return [...ingredient.facts.values()].flatMap((claims) => {
    const [own] = claims
    if (!own?.id.startsWith(`${ingredient.id}#`) || isByProgram(own) || own.note || isSeen(own)) return []
    const tables = claims.filter((claim) => !claim.id.startsWith(`${ingredient.id}#`) && isSeen(claim))
    return tables.some((claim) => confirms(claim, own)) ? [own] : []
  })
}

/** Points out remembered figures beside the same figure out of a seen source: the seen one should decide. */
export const memoryGivesWay: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) =>
    confirmedClaims(ingredient).map((own) => ({
      path: placeOf(ingredient, own),
      message: `${own.property} is remembered here and seen in a table; leave it to the table`,
    })),
  )
