import { language } from '#web/text/language.ts'

const two = (n: number): string => String(n).padStart(2, '0')

/** The day of this machine's clock, YYYY-MM-DD. */
export function today(now = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** A day as it is shown: YYYY-MM-DD, which German turns round; what is no whole day stays as it is. */
export function dayText(iso: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? []
  return language === 'de' && day !== undefined ? `${day}.${month}.${year}` : iso
}
