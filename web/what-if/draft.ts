import type { RecipeChange } from '#web/client/use-what-if.ts'
import type { whatIf } from '#web/text/what-if.ts'

export type ChangeKind = keyof (typeof whatIf)['kinds']

/** A change as far as it is filled in. */
export interface ChangeDraft {
  kind: ChangeKind
  ph: number | null
  hottest_c: number | null
  /** id of the line that it is about */
  line: string
  share_percent: number | null
  /** id of what comes in */
  other: string | null
}

export const EMPTY_CHANGE: ChangeDraft = {
  kind: 'ph',
  ph: null,
  hottest_c: null,
  line: '',
  share_percent: null,
  other: null,
}

/** The change to ask about; null while something of it is still open. */
export function changeOf({ kind, ph, hottest_c, line, share_percent, other }: ChangeDraft): RecipeChange | null {
  const hasLine = line !== ''
  if (kind === 'ph') return ph === null ? null : { ph }
  if (kind === 'hottest_c') return hottest_c === null ? null : { hottest_c }
  if (kind === 'remove') return hasLine ? { remove: line } : null
  if (kind === 'level') return hasLine && share_percent !== null ? { level: { ingredient: line, share_percent } } : null
  if (other === null) return null
  if (kind === 'add') return share_percent === null ? null : { add: { ingredient: other, share_percent } }
  if (!hasLine) return null
  return { replace: { ingredient: line, by: other, ...(share_percent !== null && { share_percent }) } }
}
