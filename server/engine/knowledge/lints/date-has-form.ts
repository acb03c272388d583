import type { Lint } from './lint.ts'
import { isDay } from './is-day.ts'
import { objectsOf, writtenFiles } from './walk.ts'

const DAYS = ['date', 'applies_from', 'older_stock_until', 'on']

/** Guards against a date that is none (a day beside the month, 30 February): what is in force is decided by it. */
export const dateHasForm: Lint = (raw) =>
  writtenFiles(raw).flatMap((file) =>
    objectsOf(file).flatMap((found) =>
      DAYS.filter((key) => found.object[key] !== undefined && !isDay(found.object[key])).map((key) => ({
        path: `${found.path}/${key}`,
        message: `${String(found.object[key])} is no day of the form YYYY-MM-DD`,
      })),
    ),
  )
