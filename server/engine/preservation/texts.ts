import type { Say } from '#engine/words/say.ts'

interface Span {
  min: number
  max: number
}

/** "0.10 to 0.12 %", "at most 0.2 %" where the range is open below. */
export function spanText({ min, max }: Span, say: Say): string {
  const [low, high] = [short2(min, say), short2(max, say)]
  if (min <= 0) return say`at most ${high} %`
  return low === high ? say`${low} %` : say`${low} to ${high} %`
}

/** Two significant digits: what a range of constants bears. */
export const short2 = (value: number, say: Say): string => say.figure(String(Number(value.toPrecision(2))))

/** A share of one as per cent: 1.6 %, 14 %, "less than 0.1 %". */
export function shareText(share: number, say: Say): string {
  const percent = share * 100
  if (percent < 0.1) return say`less than ${0.1} %`
  return say`${percent < 10 ? short2(percent, say) : say.short(Math.round(percent))} %`
}
