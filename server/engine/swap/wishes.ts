import type { Subject } from '#engine/graph/subject.ts'
import type { Wishes } from '#engine/model/swap.ts'
import type { Say } from '#engine/words/say.ts'
import { nameOf } from '#engine/formula/say.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'

/** Puts into words which wish is not fulfilled. */
type Unmet = (say: Say) => string

/** Which wish a stand-in does not fulfil; null when it fulfils all. */
export function wishUnmet(stand: Subject, wishes: Wishes, inFormula: ReadonlySet<string>): Unmet | null {
  const name = nameOf(stand)
  if (wishes.only && !wishes.only.includes(stand.id) && !inFormula.has(stand.id))
    return (say) => say`${name} is not on the shelf`
  const unwanted = (wishes.without ?? []).find(
    (one) =>
      one === stand.id ||
      stand.classes.has(one) ||
      stand.parts.some(({ subject }) => subject.id === one || subject.classes.has(one)),
  )
  if (unwanted !== undefined) {
    const words = unwanted.replaceAll('-', ' ')
    return (say) => say`${name} is ${say.text(words)}, which is not wanted`
  }
  const { hottest_c } = wishes
  const asked_c = rangeOfProperty(stand, 'heat_min_c')?.min
  if (hottest_c !== undefined && asked_c !== undefined && asked_c > hottest_c) {
    return (say) => say`${name} needs ${asked_c} °C, more than the ${hottest_c} °C wished for`
  }
  return null
}
