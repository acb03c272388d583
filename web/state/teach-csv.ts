/** A cell of a table that goes out: a number, a text, or nothing. */
export type Cell = number | string | undefined

/** Beginnings by which a spreadsheet takes a text for a formula, full-width signs included. */
const LIKE_FORMULA = /^[=+\-@\t\r\n＝＋－＠]/

/** A text that could run as a formula gets an apostrophe in front. */
function harmless(cell: Cell): string {
  if (cell === undefined) return ''
  if (typeof cell === 'number') return String(cell)
  return LIKE_FORMULA.test(cell) ? `'${cell}` : cell
}

const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

/**
 * Rows as comma-separated text with a line of heads, as RFC 4180 has it; no cell runs when a spreadsheet opens it.
 * The same as the tables of data that the server hands out; a test keeps the two alike, since a page loads no engine.
 */
export const csvOf = (heads: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  [heads, ...rows].map((row) => `${row.map((cell) => quoted(harmless(cell))).join(',')}\r\n`).join('')
