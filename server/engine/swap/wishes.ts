import type { Subject } from '#engine/graph/subject.ts'
import type { Wishes } from '#engine/model/swap.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'

/** Which wish a stand-in does not fulfil, in words; null when it fulfils all. */
export function wishUnmet(stand: Subject, wishes: Wishes, inFormula: ReadonlySet<string>): string | null {
  if (wishes.only && !wishes.only.includes(stand.id) && !inFormula.has(stand.id)) return 'is not on the shelf'
  const unwanted = (wishes.without ?? []).find(
    (one) =>
      one === stand.id ||
      stand.classes.has(one) ||
      stand.parts.some(({ subject }) => subject.id === one || subject.classes.has(one)),
  )
  if (unwanted !== undefined) return `is ${unwanted.replaceAll('-', ' ')}, which is not wanted`
  const asked_c = rangeOfProperty(stand, 'heat_min_c')?.min
  if (wishes.hottest_c !== undefined && asked_c !== undefined && asked_c > wishes.hottest_c) {
    return `needs ${asked_c} °C, more than the ${wishes.hottest_c} °C wished for`
  }
  return null
}
