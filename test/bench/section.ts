/** One part of the benchmark: what was asked, a row a method, and whether what is promised was reached. */
export interface Section {
  title: string
  rows: Row[]
  /** figures of this run against what they have to reach */
  targets: { text: string; reached: boolean }[]
}
export type Row = Record<string, string | number | null>

const cell = (value: Row[string] | undefined): string => (value === null || value === undefined ? '–' : String(value))

/** Rows under the heads of all of them, numbers to the right. */
export function tableOf(rows: readonly Row[]): string {
  const heads = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  const lines = [heads, ...rows.map((row) => heads.map((head) => cell(row[head])))]
  const widths = heads.map((_, at) => Math.max(...lines.map((line) => line[at]!.length)))
  return lines
    .map((line) =>
      line
        .map((text, at) => (at === 0 ? text.padEnd(widths[at]!) : text.padStart(widths[at]!)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}

export function sectionText({ title, rows, targets }: Section): string {
  const marks = targets.map(({ text, reached }) => `  ${reached ? 'reached' : 'MISSED '}  ${text}`)
  return [title, tableOf(rows), ...marks].join('\n')
}
