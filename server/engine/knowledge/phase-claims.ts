import { worstAccess } from '#engine/model/access.ts'
import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import { usedClaim } from './used-claim.ts'

/** What bears no more than this [C] goes in when the batch has cooled. */
const COOL_C = 50

export interface PhaseGrounds {
  solubility: string
  form: string
  /** hottest that it bears [C]; undefined where nobody states it */
  heat_max_c?: number | undefined
  /** phase of its first role */
  rolePhase: string
}

/**
 * Phase into which a thing is weighed. What goes in cold by its role (scent, preservative) does so, unless it is a
 * powder that has to dissolve first. Things of the oil phase go into the oil. Of all others heat decides, then where
 * they dissolve; what dissolves in both goes into either, and a powder of a powder role to the powders.
 */
export function phaseOf({ solubility, form, heat_max_c, rolePhase }: PhaseGrounds): string {
  const isDelicate = heat_max_c !== undefined && heat_max_c <= COOL_C
  const hasToDissolve = form === 'powder' && (solubility === 'water' || solubility === 'both')
  if (rolePhase === 'cool-down') return hasToDissolve && !isDelicate ? 'water' : 'cool-down'
  if (rolePhase === 'oil') return solubility === 'water' ? 'water' : 'oil'
  if (isDelicate) return 'cool-down'
  if (solubility === 'insoluble') return 'powder'
  if (solubility === 'oil' || solubility === 'silicone') return 'oil'
  if (solubility === 'water') return 'water'
  return rolePhase === 'powder' ? 'powder' : 'either'
}

/** Phase worked out from solubility, form, heat and first role, marked derived, where the record states none. */
export function phaseClaims(one: Ingredient, roles: ReadonlyMap<string, Role>): Claim[] {
  const [solubility, form, heat] = ['solubility', 'form', 'heat_max_c'].map((property) => usedClaim(one, property))
  const [first] = one.roles
  const role = roles.get(first?.role ?? '')
  if (usedClaim(one, 'phase') || !solubility?.is || !form?.is || !first || !role) return []
  const heat_max_c = heat?.value ?? heat?.max
  const is = phaseOf({ solubility: solubility.is, form: form.is, heat_max_c, rolePhase: role.phase })
  const from = [solubility, form, ...(heat ? [heat] : []), first]
  const bears = heat_max_c === undefined ? '' : `, bears ${heat_max_c} C`
  return [
    {
      id: `${one.id}#phase/derived`,
      property: 'phase',
      is,
      unit: '',
      kind: 'derived',
      source: [...new Set(from.map(({ source }) => source))].sort().join('; '),
      locator: `worked out from solubility (${solubility.is}), form (${form.is})${bears} and role (${role.label.toLowerCase()})`,
      access: worstAccess(from),
      date: first.date,
      used: true,
    },
  ]
}
