import { matches } from '#engine/knowledge/selector.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'

/** Guards against a clash of which one side is met by nothing: it looks like a guard and guards nothing. */
export const clashMeetsBothSides: Lint = (raw, vocabulary) => {
  const members = membersOf(vocabulary)
  return vocabulary.clashes.flatMap(({ id, between }, at) =>
    between
      .filter((selector) => !members.some((member) => matches(selector, member)))
      .map((selector) => ({
        path: `${raw.clashes.path}/clashes/${at}`,
        message: `${id}: nothing is met by "${selector}"`,
      })),
  )
}
