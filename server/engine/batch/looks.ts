import type { Look } from '#engine/model/batch.ts'
import { daysAfter } from './days.ts'
import type { Draft } from './plan.ts'

const DAYS = [1, 7, 30]

/** The days on which the product is looked at, with dates when the day of making is known. */
export function looksOf(drafts: readonly Draft[], date: string | null): Look[] {
  const look = drafts.find(({ id }) => id === 'watch')?.text ?? ''
  const signs = /look for: ([^.]*)\./.exec(look)?.[1] ?? ''
  return DAYS.map((day) => ({ day, ...(date !== null && { date: daysAfter(date, day) }), look: signs }))
}
