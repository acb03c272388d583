/**
 * Figures as German writes them. The page's own (format/number.ts) follow its language; these spare the English page a
 * file that it would share with words it does not load. A test keeps both alike.
 */
const comma = (figure: string): string => figure.replace('.', ',')

export const upTo = (value: number, digits: number): string => comma(Number(value.toFixed(digits)).toString())

export const shareText = (share_percent: number): string => `${upTo(share_percent, share_percent < 1 ? 3 : 2)} %`

export const gramsText = (mass_g: number): string => `${upTo(mass_g, mass_g < 1 ? 3 : mass_g < 100 ? 2 : 1)} g`

/** So many digits that count. */
export const precise = (value: number, digits: number): string => comma(Number(value.toPrecision(digits)).toString())

export function rangeText({ min, max }: { min?: number; max?: number }): string {
  if (min !== undefined && max !== undefined) return min === max ? upTo(min, 3) : `${upTo(min, 3)} bis ${upTo(max, 3)}`
  if (min !== undefined) return `ab ${upTo(min, 3)}`
  return max === undefined ? '' : `bis ${upTo(max, 3)}`
}

export const wholeText = (n: number): string => n.toLocaleString('de')

/** "1 Zeile", "3 Zeilen". */
export const count = (n: number, one: string, many: string): string => `${wholeText(n)} ${n === 1 ? one : many}`

/** "0,2 bis 0,5", or one figure where both ends read the same. */
export const spanText = ({ min, max }: { min: number; max: number }, digits = 3): string =>
  upTo(min, digits) === upTo(max, digits) ? upTo(min, digits) : `${upTo(min, digits)} bis ${upTo(max, digits)}`
