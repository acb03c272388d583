import { KOH_MG_PER_MOL } from '#engine/chemistry/oil-constants.ts'
import { numberOf, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Claim } from '#engine/model/claim.ts'

/** KOH that one gram binds [mg]: usual value and the ends of what is stated, with the claim behind it. */
export interface KohBound {
  mg: number
  least: number
  most: number
  claim: Claim
  what: 'saponification value' | 'acid value' | 'molar mass'
}

function ofClaim(claim: Claim, what: KohBound['what']): KohBound | undefined {
  const most = claim.value ?? claim.max ?? claim.min
  // A bound at the top alone ("at most 5") leaves the bottom at nothing; a value below nothing there is not.
  const least = claim.value ?? claim.min ?? 0
  return most === undefined ? undefined : { mg: (least + most) / 2, least, most, claim, what }
}

/**
 * KOH that a fat, wax or fatty acid binds: its saponification value, for a free fatty acid the acid value or, where none
 * is stated, 56106 / molar mass. Undefined when nothing is known; nothing is assumed.
 */
export function kohBound(subject: Subject): KohBound | undefined {
  const free = subject.classes.has('fatty-acid')
  const stated = usedClaim(subject, free ? 'acid_value' : 'saponification_value')
  if (stated) return ofClaim(stated, free ? 'acid value' : 'saponification value')
  const claim = free ? usedClaim(subject, 'molar_mass') : undefined
  const molar_mass = free ? numberOf(subject, 'molar_mass') : undefined
  if (!claim || molar_mass === undefined) return undefined
  const mg = KOH_MG_PER_MOL / molar_mass
  return { mg, least: mg, most: mg, claim, what: 'molar mass' }
}
