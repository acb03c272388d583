import { calculate } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'
import { stated } from './cases.ts'

/** One figure of a case: what is printed, what comes out, how far apart they may be. */
export interface Judged {
  what: string
  expected: number
  got: number
  /** absolute */
  within: number
  /** why it is known to disagree */
  flagged?: string
}

export type Figures = Record<string, number>
export const MMOL = 1e-3

export const judged = (what: string, expected: unknown, got: number, within: number): Judged => ({
  what,
  expected: Number(expected),
  got,
  within,
})
export const share = (what: string, expected: unknown, got: number, percent: number): Judged =>
  judged(what, expected, got, (Math.abs(Number(expected)) * percent) / 100)

export const world = realWorld

/** Dose by the calculation that the page offers [mmol/L and %]. */
export function dose(
  systems: Record<string, number>,
  ions: [number, number][],
  add: string,
  target_ph: number,
): Figures {
  const input = { ...stated({ systems, ions, temp_c: 25 }), add, target_ph }
  return calculate(world(), 'acid-dose', { ...input, systems: [...input.systems], ions: [...input.ions] }).values
}

export const isWithin = ({ expected, got, within }: Judged): boolean => Math.abs(got - expected) <= within
