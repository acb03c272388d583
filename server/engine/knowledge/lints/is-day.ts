const DAYS_OF_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0

/** A text YYYY-MM-DD that names a day of the calendar from 1900 on. */
export function isDay(value: unknown): boolean {
  const match = typeof value === 'string' ? /^(\d{4})-(\d\d)-(\d\d)$/.exec(value) : null
  if (!match) return false
  const [year = 0, month = 0, day = 0] = match.slice(1).map(Number)
  const longest = (DAYS_OF_MONTH[month - 1] ?? 0) + (month === 2 && isLeap(year) ? 1 : 0)
  return year >= 1900 && day >= 1 && day <= longest
}
