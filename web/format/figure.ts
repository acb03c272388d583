import { written } from './number.ts'

const SUPERSCRIPT = '⁰¹²³⁴⁵⁶⁷⁸⁹'

const raised = (exponent: number): string =>
  (exponent < 0 ? '⁻' : '') + [...String(Math.abs(exponent))].map((digit) => SUPERSCRIPT.charAt(Number(digit))).join('')

/** A figure to so many digits that count; very large and very small ones as a power of ten. */
export function figureText(value: number, digits = 4): string {
  if (value === 0) return '0'
  const size = Math.abs(value)
  if (size >= 1e-4 && size < 1e7) return written(Number(value.toPrecision(digits)).toString()).replace('-', '−')
  const [factor = '', exponent = '0'] = value.toExponential(digits - 1).split('e')
  return `${written(Number(factor).toString())} × 10${raised(Number(exponent))}`.replace('-', '−')
}
