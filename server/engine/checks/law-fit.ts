import type { FormulaContext } from '#engine/formula/context.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { LimitRow } from '#engine/model/records.ts'

/** What a person would have to say before a row is known to bear on a product. */
export interface Ask {
  kind: 'areas' | 'use' | 'spray' | 'purpose' | 'blend'
  /** what the question is about: the use that the entry names, the blend whose shares are open */
  text: string
}

export interface Fit {
  fits: 'yes' | 'no' | 'unknown'
  asks: Ask[]
}

/** Uses that this tool does not serve. */
const NOT_A_COSMETIC_HERE: ReadonlySet<string> = new Set(['oral'])
const SPRAY = 'spray'

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

function fitsForm({ scope }: LimitRow, form: FormulaContext['form']): boolean {
  if (!scope.form) return true
  // How a product is dispensed is not stated; only of a bar is it plain.
  if (scope.form.includes(SPRAY)) return form !== 'bar'
  return scope.form.includes(form)
}

const asksAreas = ({ scope }: LimitRow, { areas }: FormulaContext): boolean =>
  areas === undefined && Boolean(scope.areas ?? scope.not_areas)

function fitsAreas({ scope }: LimitRow, { areas }: FormulaContext): boolean {
  if (scope.areas?.every((area) => NOT_A_COSMETIC_HERE.has(area))) return false
  if (areas === undefined) return true
  if (scope.areas && !scope.areas.some((area) => areas.includes(area))) return false
  return !scope.not_areas?.some((area) => areas.includes(area))
}

/** Whether a row bears on this product. What nobody stated (areas, use, spray) makes it unknown, never no. */
export function fitOf(row: LimitRow, context: FormulaContext): Fit {
  const { scope } = row
  if (scope.product && scope.product !== context.formula.product) return NO
  if (!fitsForm(row, context.form) || !fitsAreas(row, context)) return NO
  if (scope.only !== undefined && !isPossible(row, context)) return NO
  const asks: Ask[] = [
    ...(asksAreas(row, context) ? [{ kind: 'areas' as const, text: 'areas of use' }] : []),
    ...(scope.only !== undefined ? [{ kind: 'use' as const, text: scope.only }] : []),
    ...(scope.form?.includes(SPRAY) ? [{ kind: 'spray' as const, text: 'a spray' }] : []),
  ]
  return { fits: asks.length > 0 ? 'unknown' : 'yes', asks }
}

const MAKES_POSSIBLE: ReadonlySet<string> = new Set(['needs', 'least_percent', 'above_ph'])

/** How narrow a row is: what it names beside others. What makes a use possible is no further narrowing. */
export const width = ({ scope }: LimitRow): number =>
  Object.keys(scope).filter((key) => !MAKES_POSSIBLE.has(key)).length
