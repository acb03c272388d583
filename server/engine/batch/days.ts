/** Days since 1 March of the year 0 in the Gregorian calendar: no clock is needed to count days. */
function dayNumber(year: number, month: number, day: number): number {
  const fromMarch = (month + 9) % 12
  const y = month <= 2 ? year - 1 : year
  return (
    365 * y +
    Math.floor(y / 4) -
    Math.floor(y / 100) +
    Math.floor(y / 400) +
    Math.floor((153 * fromMarch + 2) / 5) +
    day -
    1
  )
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
const daysIn = (year: number, month: number): number =>
  [31, isLeap(year) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0

/** Year, month and day of YYYY-MM-DD; null for a day that the calendar does not have. */
export function readDay(text: string): [number, number, number] | null {
  const [year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []).slice(1).map(Number)
  if (year === undefined || month === undefined || day === undefined) return null
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month) ? [year, month, day] : null
}

const two = (n: number): string => String(n).padStart(2, '0')

/**
 * The day so many days later, YYYY-MM-DD.
 *
 * @param text  a day, YYYY-MM-DD, in the Gregorian calendar
 * @param days  0 or more
 * @throws RangeError for a day that the calendar does not have
 */
export function daysAfter(text: string, days: number): string {
  const start = readDay(text)
  if (!start) throw new RangeError(`date: there is no day ${text}`)
  const number = dayNumber(...start) + days
  let [year, month] = start
  while (dayNumber(year, month, daysIn(year, month)) < number) {
    month += 1
    if (month > 12) [year, month] = [year + 1, 1]
  }
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(number - dayNumber(year, month, 1) + 1)}`
}
