import { matches } from '#engine/knowledge/selector.ts'
import type { When } from '#engine/model/records.ts'
import { inside } from '#engine/units/range.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { FormulaContext } from './context.ts'

type Circumstances = Pick<FormulaContext, 'lines' | 'form' | 'ph' | 'areas' | 'formula'>

const anyOther = (selectors: readonly string[], of: Subject, here: Circumstances): boolean =>
  here.lines.some((line) => line.subject.id !== of.id && selectors.some((selector) => matches(selector, line.subject)))

/** Whether the circumstances of a statement hold here. A pH that is not known fulfils no pH condition. */
export function holdsHere(when: When | undefined, of: Subject, here: Circumstances, share_percent: number): boolean {
  if (!when) return true
  if (when.form && !when.form.includes(here.form)) return false
  if (when.product && when.product !== here.formula.product) return false
  if (when.areas && !when.areas.some((area) => here.areas?.includes(area))) return false
  if (when.min_percent !== undefined && share_percent < when.min_percent) return false
  if (when.max_percent !== undefined && share_percent > when.max_percent) return false
  if (when.ph && (here.ph === null || !inside(here.ph, when.ph))) return false
  if (when.with && !anyOther(when.with, of, here)) return false
  return !(when.without && anyOther(when.without, of, here))
}
