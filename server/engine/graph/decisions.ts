import type { Say } from '#engine/words/say.ts'
import { isFromClass } from '#engine/model/evidence.ts'
import type { Claim, Ingredient } from '#engine/model/records.ts'

/** Which of several claims the program goes by, and why. */
export interface Decision {
  property: string
  /** id of the claim that is used; null where none of them decides */
  claim: string | null
  why: string
}

const SEEN: Record<Claim['access'], (say: Say) => string> = {
  read: (say) => say`read in its source`,
  secondary: (say) => say`seen quoted`,
  memory: (say) => say`from memory`,
  'common-practice': (say) => say`common practice`,
}

const fromRecord = ({ id }: Claim, ingredient: Ingredient): boolean => id.startsWith(`${ingredient.id}#`)
const isDerived = ({ id }: Claim): boolean => id.endsWith('/derived')

function reasonOf(used: Claim, others: number, ingredient: Ingredient, say: Say): string {
  const beside = others === 1 ? say`the other one` : say`the ${others} others`
  const seen = SEEN[used.access](say)
  if (isFromClass(used))
    return say`The record states none of its own; what its class or role states goes before what holds under a condition only (${seen}).`
  if (isDerived(used))
    return say`Worked out from other values of the record (${seen}); ${beside} cannot be used as a number here.`
  if (used.shares)
    return say`The most general profile that names nearly all acids (${seen}); ${beside} are single studies or samples.`
  if (fromRecord(used, ingredient))
    return say`Put first in the record when it was reviewed (${seen}), before ${beside}.`
  return say`The record states none of its own; of the tables the one best seen (${seen}) goes before ${beside}.`
}

function reason(used: Claim | undefined, claims: readonly Claim[], ingredient: Ingredient, say: Say): string {
  if (!used)
    return say`None of them decides: each holds under a condition or is told in words. All are for you to read.`
  const why = reasonOf(used, claims.length - 1, ingredient, say)
  return used.note ? `${why} ${say`Its note: ${used.note}.`}` : why
}

/** For every contested property the claim that is used and why; all claims stay in the reply. */
export const decisionsOf = (ingredient: Ingredient, contested: readonly string[], say: Say): Decision[] =>
  contested.map((property) => {
    const claims = ingredient.facts.get(property) ?? []
    const used = claims.find((claim) => claim.used)
    return { property, claim: used?.id ?? null, why: reason(used, claims, ingredient, say) }
  })
