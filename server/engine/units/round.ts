/** Rounds to a number of decimals; used only where a figure leaves the engine. */
export function roundTo(value: number, decimals: number): number {
  const factor = 10 ** decimals
  return Math.round((value + Number.EPSILON) * factor) / factor
}

/** Three significant digits, no trailing zeros: 0.375, 12.5, 80. */
export const short = (value: number): string => String(Number(value.toPrecision(3)))
