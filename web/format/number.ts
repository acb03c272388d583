import { language } from '#web/text/language.ts'

const RANGE = { en: ['to', 'from', 'up to'], de: ['bis', 'ab', 'bis'] } as const
const [TO, FROM, UP_TO] = RANGE[language]

/** A figure of a program as a person reads it: German has a comma before the decimals. Only for what is shown. */
export const written = (figure: string): string => (language === 'de' ? figure.replace('.', ',') : figure)

/** A figure with at most `digits` decimals and no trailing zeros. */
export const upTo = (value: number, digits: number): string => written(Number(value.toFixed(digits)).toString())

/** A whole number with its thousands set apart. */
export const wholeText = (n: number): string => n.toLocaleString(language)

/** Share [%] as text: enough digits to weigh by, no more. */
export const shareText = (share_percent: number): string => `${upTo(share_percent, share_percent < 1 ? 3 : 2)} %`

/** Mass [g] as text; finer for small amounts. */
export const gramsText = (mass_g: number): string => `${upTo(mass_g, mass_g < 1 ? 3 : mass_g < 100 ? 2 : 1)} g`

/** "4 to 7", "from 4", "up to 7" or nothing. */
export function rangeText(range: { min?: number; max?: number }): string {
  if (range.min !== undefined && range.max !== undefined) {
    return range.min === range.max ? upTo(range.min, 3) : `${upTo(range.min, 3)} ${TO} ${upTo(range.max, 3)}`
  }
  if (range.min !== undefined) return `${FROM} ${upTo(range.min, 3)}`
  return range.max === undefined ? '' : `${UP_TO} ${upTo(range.max, 3)}`
}
