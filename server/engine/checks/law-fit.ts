import type { FormulaContext } from '#engine/formula/context.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { Dispensing } from '#engine/model/formula.ts'
import type { LimitRow } from '#engine/model/records.ts'

/** What a person would have to say before a row is known to bear on a product. */
export interface Ask {
  kind: 'areas' | 'use' | 'professional' | 'spray' | 'purpose' | 'blend' | 'strength'
  /** what the question is about: the use that the entry names, the blend whose shares are open */
  text: string
}

export interface Fit {
  fits: 'yes' | 'no' | 'unknown'
  asks: Ask[]
}

/** Uses that this tool does not serve. */
const NOT_A_COSMETIC_HERE: ReadonlySet<string> = new Set(['oral'])
type Answer = 'yes' | 'no' | 'unknown'

const NO: Fit = { fits: 'no', asks: [] }

/** A use is possible only beside what makes it up: make-up holds a colour, a soap holds lye or soap. */
function isPossible({ scope }: LimitRow, { substances, ph }: FormulaContext): boolean {
  if (scope.above_ph !== undefined && (ph === null || ph <= scope.above_ph)) return false
  if (!scope.needs) return true
  const { needs } = scope
  const share_percent = substances
    .filter(({ subject }) => needs.some((selector) => matches(selector, subject)))
    .reduce((sum, substance) => sum + substance.share_percent, 0)
  return share_percent > 0 && share_percent >= (scope.least_percent ?? 0)
}

/** Ways of dispensing that a row names, with what a formula may say of them. */
const SPRAYS: Record<string, readonly Dispensing[]> = { spray: ['aerosol', 'pump-spray'], aerosol: ['aerosol'] }

/** Whether it is dispensed in a way that a row names; only of a bar it is plain without a word. */
function isSprayed(forms: readonly string[], { form, formula }: FormulaContext): Answer {
  const named = forms.flatMap((one) => SPRAYS[one] ?? [])
  if (named.length === 0 || form === 'bar') return 'no'
  if (formula.dispensing === undefined) return 'unknown'
  return named.includes(formula.dispensing) ? 'yes' : 'no'
}

function fitsForm({ scope }: LimitRow, context: FormulaContext): Answer {
  if (scope.not_form) {
    const sprayed = isSprayed(scope.not_form, context)
    if (sprayed !== 'no') return sprayed === 'yes' ? 'no' : 'unknown'
  }
  if (!scope.form || scope.form.includes(context.form)) return 'yes'
  return isSprayed(scope.form, context)
}

/** What the maker says of the uses that a row names. */
function saidOfUse({ scope }: LimitRow, { uses }: FormulaContext['formula']): Answer {
  if (!scope.uses && !scope.not_uses) return scope.only === undefined || scope.professional ? 'yes' : 'unknown'
  if (uses === undefined) return 'unknown'
  if (scope.not_uses?.some((use) => uses.includes(use))) return 'no'
  return !scope.uses || scope.uses.some((use) => uses.includes(use)) ? 'yes' : 'no'
}

function saidOfUser({ scope }: LimitRow, { professional }: FormulaContext['formula']): Answer {
  if (!scope.professional) return 'yes'
  return professional === undefined ? 'unknown' : professional ? 'yes' : 'no'
}

const asksAreas = ({ scope }: LimitRow, { areas }: FormulaContext): boolean =>
  areas === undefined && Boolean(scope.areas ?? scope.not_areas)

function fitsAreas({ scope }: LimitRow, { areas }: FormulaContext): boolean {
  if (scope.areas?.every((area) => NOT_A_COSMETIC_HERE.has(area))) return false
  if (areas === undefined) return true
  if (scope.areas && !scope.areas.some((area) => areas.includes(area))) return false
  return !scope.not_areas?.some((area) => areas.includes(area))
}

/** Whether a row bears on this product. What nobody stated (areas, use, user, spray) makes it unknown, never no. */
export function fitOf(row: LimitRow, context: FormulaContext): Fit {
  const { scope } = row
  if (scope.product && scope.product !== context.formula.product) return NO
  const sprayed = fitsForm(row, context)
  const use = saidOfUse(row, context.formula)
  const user = saidOfUser(row, context.formula)
  if (!fitsAreas(row, context) || [sprayed, use, user].includes('no')) return NO
  if (use === 'unknown' && !isPossible(row, context)) return NO
  const asks: Ask[] = [
    ...(asksAreas(row, context) ? [{ kind: 'areas' as const, text: 'areas of use' }] : []),
    ...(use === 'unknown' ? [{ kind: 'use' as const, text: scope.only ?? '' }] : []),
    ...(use === 'yes' && user === 'unknown' ? [{ kind: 'professional' as const, text: 'professional use' }] : []),
    ...(sprayed === 'unknown' ? [{ kind: 'spray' as const, text: 'a spray' }] : []),
  ]
  return { fits: asks.length > 0 ? 'unknown' : 'yes', asks }
}

const MAKES_POSSIBLE: ReadonlySet<string> = new Set(['needs', 'least_percent', 'above_ph', 'uses', 'not_uses'])

/** How narrow a row is: what it names beside others. What makes a use possible is no further narrowing. */
export const width = ({ scope }: LimitRow): number =>
  Object.keys(scope).filter((key) => !MAKES_POSSIBLE.has(key)).length

const sameUses = ({ scope: a }: LimitRow, { scope: b }: LimitRow): boolean =>
  a.product === b.product && String(a.areas) === String(b.areas) && String(a.uses) === String(b.uses)

/** Whether the other row is the one for professionals where this is the one for the public. */
const isForProfessionals = (row: LimitRow, other: LimitRow): boolean =>
  !row.scope.professional && other.scope.professional === true && sameUses(row, other)

/** Whether the other row names a use and has figures and words of its own, where this one speaks of all other products. */
const namesUse = (row: LimitRow, other: LimitRow): boolean =>
  row.scope.only === undefined &&
  row.max_percent !== undefined &&
  other.scope.only !== undefined &&
  other.max_percent !== undefined &&
  other.warning !== undefined

/** A row gives way to one of a stated use, or to the one for professionals, where that is known to bear on the product. */
export const givesWay = (row: LimitRow, rows: readonly LimitRow[], context: FormulaContext): boolean =>
  rows.some((other) => (isForProfessionals(row, other) || namesUse(row, other)) && fitOf(other, context).fits === 'yes')
