import type { Lint } from './lint.ts'
import { isDay } from './is-day.ts'
import { problemsIn, writtenFiles } from './walk.ts'

const DAYS = ['date', 'applies_from', 'older_stock_until', 'on']

/** Guards against a date that is none (a day beside the month, 30 February): what is in force is decided by it. */
export const dateHasForm: Lint = (raw) =>
  problemsIn(writtenFiles(raw), (object, report) => {
    for (const key of DAYS) {
      const day = object[key]
      if (day !== undefined && !isDay(day)) report(`${String(day)} is no day of the form YYYY-MM-DD`, key)
    }
  })
