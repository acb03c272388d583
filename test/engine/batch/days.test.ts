import fc from 'fast-check'
import { expect, test } from 'vitest'
import { daysAfter, readDay } from '#engine/batch/days.ts'

test.each([
  ['2026-03-12', 1, '2026-03-13'],
  ['2026-12-25', 7, '2027-01-01'],
  ['2026-01-31', 30, '2026-03-02'],
  ['2028-02-28', 1, '2028-02-29'], // a leap year
  ['2100-02-28', 1, '2100-03-01'], // a century that is none
  ['2000-02-28', 1, '2000-02-29'], // and one that is
])('%s and %i days is %s', (day, days, later) => expect(daysAfter(day, days)).toBe(later))

test('counts as the calendar of the machine does', () =>
  fc.assert(
    fc.property(
      fc.date({ min: new Date('1900-01-01'), max: new Date('2200-01-01'), noInvalidDate: true }),
      fc.nat(400),
      (date, days) => {
        const later = new Date(date.getTime() + days * 86_400_000)
        expect(daysAfter(date.toISOString().slice(0, 10), days)).toBe(later.toISOString().slice(0, 10))
      },
    ),
  ))

test('a day that the calendar does not have is refused', () => {
  for (const day of ['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31', 'soon', '2026-1-1'])
    expect(readDay(day)).toBeNull()
  expect(() => daysAfter('2026-02-29', 1)).toThrow(/no day 2026-02-29/)
})
