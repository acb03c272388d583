import type { Claim, Ingredient } from '#engine/model/records.ts'
import { rangeOfProperty, usedClaim } from './subject.ts'

/** Warmest that a cold process gets [C]: what melts in below this needs no heating. */
export const COLD_C = 40

/** Whether a thing can be worked in without heat, and the statement that says so; null where none does. */
export interface ColdProcess {
  cold: boolean
  claim: Claim
}

/** A table says how a gum or polymer takes up water: "cold" and "hot or cold" are its words for no need of heat. */
const swellsCold = ({ conditions }: Claim): boolean => conditions === 'cold' || conditions === 'hot or cold'

/** Share that dissolves in water at room temperature from which there is no need to heat [%, or g in 100 mL]. */
const SOLUBLE_PERCENT = 1

const dissolvesCold = ({ min, value }: Claim): boolean => (value ?? min ?? 0) >= SOLUBLE_PERCENT

function byMelting(subject: Ingredient): ColdProcess | null {
  const claim = usedClaim(subject, 'melting_c')
  const melts_c = rangeOfProperty(subject, 'melting_c')?.max
  return claim && melts_c !== undefined ? { cold: melts_c <= COLD_C, claim } : null
}

/**
 * Reads from what is stated whether an ingredient can be worked in without heat: how it takes up water, the least
 * process temperature, for what dissolves in oil its melting point, for what dissolves in water how much does so at room
 * temperature. A liquid has nothing to melt, and an insoluble powder is only stirred in. A powder or paste of which
 * none of this is known gives null, for it may need heat.
 */
export function coldProcess(subject: Ingredient): ColdProcess | null {
  const hydration = subject.facts.get('hydration')?.find(swellsCold)
  if (hydration) return { cold: true, claim: hydration }
  const heat = usedClaim(subject, 'heat_min_c')
  const heat_c = rangeOfProperty(subject, 'heat_min_c')
  if (heat && heat_c) return { cold: (heat_c.min ?? heat_c.max ?? Infinity) <= COLD_C, claim: heat }
  const form = usedClaim(subject, 'form')
  const solubility = usedClaim(subject, 'solubility')
  if (form?.is === 'liquid') return { cold: true, claim: form }
  if (form?.is === 'powder' && solubility?.is === 'insoluble') return { cold: true, claim: solubility }
  if (solubility?.is === 'oil') return byMelting(subject)
  const dissolved = ['water_solubility_percent', 'water_solubility'].flatMap((one) => subject.facts.get(one) ?? [])
  const claim = dissolved.find(dissolvesCold)
  return claim ? { cold: true, claim } : null
}
