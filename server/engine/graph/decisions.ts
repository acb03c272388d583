import { isFromClass } from '#engine/model/evidence.ts'
import type { Claim, Ingredient } from '#engine/model/records.ts'

/** Which of several claims the program goes by, and why. */
export interface Decision {
  property: string
  /** id of the claim that is used; null where none of them decides */
  claim: string | null
  why: string
}

const SEEN: Record<Claim['access'], string> = {
  read: 'read in its source',
  secondary: 'seen quoted',
  memory: 'from memory',
  'common-practice': 'common practice',
}

const fromRecord = ({ id }: Claim, ingredient: Ingredient): boolean => id.startsWith(`${ingredient.id}#`)
const isDerived = ({ id }: Claim): boolean => id.endsWith('/derived')

function reason(used: Claim | undefined, claims: readonly Claim[], ingredient: Ingredient): string {
  if (!used) return 'None of them decides: each holds under a condition or is told in words. All are for you to read.'
  const others = claims.length - 1
  const beside = others === 1 ? 'the other one' : `the ${others} others`
  const seen = SEEN[used.access]
  const note = used.note ? ` Its note: ${used.note}.` : ''
  if (isFromClass(used))
    return `The record states none of its own; what its class or role states goes before what holds under a condition only (${seen}).${note}`
  if (isDerived(used))
    return `Worked out from other values of the record (${seen}); ${beside} cannot be used as a number here.${note}`
  if (used.shares)
    return `The most general profile that names nearly all acids (${seen}); ${beside} are single studies or samples.${note}`
  if (fromRecord(used, ingredient))
    return `Put first in the record when it was reviewed (${seen}), before ${beside}.${note}`
  return `The record states none of its own; of the tables the one best seen (${seen}) goes before ${beside}.${note}`
}

/** For every contested property the claim that is used and why; all claims stay in the reply. */
export const decisionsOf = (ingredient: Ingredient, contested: readonly string[]): Decision[] =>
  contested.map((property) => {
    const claims = ingredient.facts.get(property) ?? []
    const used = claims.find((claim) => claim.used)
    return { property, claim: used?.id ?? null, why: reason(used, claims, ingredient) }
  })
