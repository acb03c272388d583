import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/**
 * A CAS number is two to seven digits, two digits and a check digit: the sum of all digits before it, each times its
 * place counted from the right, modulo 10.
 */
export function isCasNumber(text: string): boolean {
  if (!/^[1-9]\d{1,6}-\d\d-\d$/.test(text)) return false
  const digits = text.replaceAll('-', '')
  const sum = [...digits.slice(0, -1)].reverse().reduce((total, digit, at) => total + Number(digit) * (at + 1), 0)
  return sum % 10 === Number(digits.at(-1))
}

/** Guards against mistyped CAS numbers: the last digit is a check on the others. */
export const casHasCheckDigit: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) =>
    ingredient.cas
      .filter((cas) => !isCasNumber(cas))
      .map((cas) => ({
        path: `${fileOf(ingredient)}/cas`,
        message: `${cas} is no CAS number: its check digit is off`,
      })),
  )
