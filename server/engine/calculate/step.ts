import type { Step } from '#engine/model/calculation.ts'

/** A figure as it stands in the working: five significant digits, so that nobody has to round on the way; a negative one in brackets. */
export function figure(value: number): string {
  const said = String(Number(Math.abs(value).toPrecision(5)))
  return value < 0 && said !== '0' ? `(−${said})` : said
}

/** One line of the working. */
export const step = (text: string, expression: string, value: number, unit: string): Step => ({
  text,
  expression,
  value,
  unit,
})

/** Ids of sources, parted where one claim names several, each once. */
export const listed = (...sources: readonly string[]): string[] => [
  ...new Set(sources.flatMap((source) => source.split(/\s*;\s*/)).filter((source) => source !== '')),
]
