import { because, nameOf } from '#engine/checks/say.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Temperature } from '#engine/model/batch.ts'
import { named } from './draft.ts'
import type { Say } from '#engine/words/say.ts'
import type { Placed, Reason } from './item.ts'
import { practice } from './reasons.ts'
import { bears_c } from './roles-here.ts'

/** Usual top for preservatives, scents and actives, also where a record would allow more [C]. */
export const COOL_C = 40
/** A jelly sets before that: its late lines go in while it still pours [C]. */
export const POURS_C = 60

/** The line with the lowest heat limit on record; null where none states one. */
export function shyest(items: readonly Placed[]): { item: Placed; limit_c: number } | null {
  const known = items.flatMap((item) => {
    const limit_c = bears_c(item.line)
    return limit_c === undefined ? [] : [{ item, limit_c }]
  })
  return known.sort((a, b) => a.limit_c - b.limit_c || (a.item.key < b.item.key ? -1 : 1))[0] ?? null
}

export const limitClaim = ({ item, limit_c }: { item: Placed; limit_c: number }, say: Say) =>
  because(say`${nameOf(item.line.subject)} bears up to ${limit_c} °C`, usedClaim(item.line.subject, 'heat_max_c'))

/** Why no warmer, whatever the lines bear. */
const usualTop = (top_c: typeof COOL_C | typeof POURS_C, say: Say): Reason =>
  practice(
    top_c === COOL_C
      ? say`preservatives, scents and actives go in at 40 °C or below, whatever more they bear`
      : say`a jelly takes its late lines while it still pours, as cool as that allows`,
    say,
  )

/** Lowest limit among the late lines, with its claim; never above what is usual. */
export function coolTemp(
  items: readonly Placed[],
  say: Say,
  top_c: typeof COOL_C | typeof POURS_C = COOL_C,
): Temperature {
  const least = shyest(items)
  const usual = usualTop(top_c, say)
  const unknown = items.filter(({ line }) => bears_c(line) === undefined)
  const open = unknown.length > 0 ? [because(say`what heat ${named(unknown, say)} bears is not on record`)] : []
  if (!least) return { max: top_c, because: [usual, ...open] }
  const claim = limitClaim(least, say)
  const isLower = least.limit_c < top_c
  return { max: isLower ? least.limit_c : top_c, because: [...(isLower ? [] : [usual]), claim, ...open] }
}
