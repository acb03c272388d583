import type { Claim, Ingredient } from '#engine/model/records.ts'
import { usedClaim } from './used-claim.ts'

const LIQUID_BELOW_C = 15
const SOLID_ABOVE_C = 30
/** Fats and waxes melt below; what melts above is sold as crystals or powder. */
const POWDER_ABOVE_C = 90
const LEAST_ACTIVE_PERCENT = 95

const ends = ({ value, min, max }: Claim): { least: number; most: number } => ({
  least: value ?? min ?? max ?? Number.NaN,
  most: value ?? max ?? min ?? Number.NaN,
})

/** Form at room temperature by melting point [C]; null between, where grades differ, and for what water dissolves. */
function formAt({ least, most }: { least: number; most: number }, mixesWithOil: boolean): string | null {
  if (most < LIQUID_BELOW_C) return 'liquid'
  if (least > POWDER_ABOVE_C) return 'powder'
  return mixesWithOil && least > SOLID_ABOVE_C && most <= POWDER_ABOVE_C ? 'solid' : null
}

/**
 * Form as supplied from the melting point, marked derived, where the record states no form. None for what is supplied
 * dissolved: its melting point is that of the substance alone.
 */
export function formClaims(one: Ingredient): Claim[] {
  const melting = usedClaim(one, 'melting_c')
  if (!melting || usedClaim(one, 'form')) return []
  const active = usedClaim(one, 'active_percent')
  if (active && ends(active).most < LEAST_ACTIVE_PERCENT) return []
  const mixesWithOil = ['oil', 'both', 'silicone'].includes(usedClaim(one, 'solubility')?.is ?? '')
  const form = formAt(ends(melting), mixesWithOil)
  if (form === null) return []
  const { source, access, date } = melting
  const locator = `worked out from ${melting.id}`
  const id = `${one.id}#form/derived`
  return [{ id, property: 'form', is: form, unit: '', kind: 'derived', source, locator, access, date, used: true }]
}
