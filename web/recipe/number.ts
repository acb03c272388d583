/** A number as people write it: point or comma, `.5`, thousands with a comma only before exactly three digits of a large figure. */
export const NUMBER = String.raw`(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d+)?|[.,]\d+)`

/**
 * Reads a typed number; decimal comma and decimal point both count.
 *
 * @returns the number, or null when the text is no number
 *
 * "1,250" is one and a quarter unless `thousands` says that such a figure is a weight.
 */
export function readNumber(text: string, thousands = false): number | null {
  const bare = text.replace(/[\s\u00a0\u202f%]/g, '')
  if (!/^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+|\d{1,3}(?:,\d{3})+(?:\.\d+)?)$/.test(bare)) return null
  const grouped = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(bare)
  const commas = (bare.match(/,/g) ?? []).length
  if (grouped && (thousands || commas > 1 || bare.includes('.'))) return Number(bare.replace(/,/g, ''))
  const value = Number(bare.replace(',', '.'))
  return Number.isFinite(value) ? value : null
}
