import { short } from '#engine/units/round.ts'

interface Span {
  min: number
  max: number
}

/** "0.10 to 0.12 %", "at most 0.2 %" where the range is open below. */
export function spanText({ min, max }: Span): string {
  const [low, high] = [short2(min), short2(max)]
  if (min <= 0) return `at most ${high} %`
  return low === high ? `${low} %` : `${low} to ${high} %`
}

/** Two significant digits: what a range of constants bears. */
export const short2 = (value: number): string => String(Number(value.toPrecision(2)))

/** "a", "a and b", "a, b and c". */
export const list = (words: readonly string[]): string =>
  words.length <= 1 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`

/** A share of one as per cent: 1.6 %, 14 %, "less than 0.1 %". */
export function shareText(share: number): string {
  const percent = share * 100
  return percent < 0.1 ? 'less than 0.1 %' : `${percent < 10 ? short2(percent) : short(Math.round(percent))} %`
}
