import { written } from './number.ts'

/** Decimals that a scale shows: 2 for a step of 0.01. */
export const decimalsOf = (step_g: number): number => Math.max(0, Math.ceil(-Math.log10(step_g) - 1e-9))

/** Mass [g] with as many decimals as the scale shows, so that figures stand under one another. */
export const onScale = (mass_g: number, step_g: number): string => written(mass_g.toFixed(decimalsOf(step_g)))

/** An amount of money with two decimals; small ones keep the digits that say something. */
export function costText(cost: number, currency: string): string {
  const figure = cost > 0 && cost < 0.1 ? cost.toFixed(3) : cost.toFixed(2)
  return currency === '' ? written(figure) : `${written(figure)} ${currency}`
}
