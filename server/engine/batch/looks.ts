import type { Look } from '#engine/model/batch.ts'
import { daysAfter } from './days.ts'
import type { Plan } from './plan.ts'
import { WATCHED } from './steps-end.ts'

const DAYS = [1, 7, 30]

/** The days on which the product is looked at, with dates when the day of making is known. */
export const looksOf = ({ process, date, say }: Plan): Look[] =>
  DAYS.map((day) => ({ day, ...(date !== null && { date: daysAfter(date, day) }), look: WATCHED[process](say) }))
